/**
 * The scene as a part of the sheet: it reads the open job, the selection and the theme from the stores, picks go back
 * into them, and its own bar chooses where one looks from. Acts belong to the sheet that shows it: they come in as props.
 * Scene and panels meet only in stores, so main.tsx hands this component to the sheet.
 */
import { type ReactNode, useEffect, useLayoutEffect, useMemo, useRef, useState, useSyncExternalStore } from 'react'
import { useStore } from 'zustand'
import type { Belief, GroundHazard, GroundPoint, Instant } from '../../engine'
import { say } from '../../text'
import { formStore } from '../stores/formStore'
import { handlingOf } from '../stores/handling'
import { jobStore } from '../stores/jobStore'
import { gazeAway, lookStore } from '../stores/lookStore'
import { measureTape } from '../stores/measureTape'
import { settingsStore } from '../stores/settingsStore'
import { holdTape, tapeStore } from '../stores/tapeStore'
import { choosePersons, chooseThing, viewStore } from '../stores/viewStore'
import { type ViewName, viewNames } from './camera/presets'
import { LookButtons, ViewButton } from './LookButtons'
import type { Feelers } from './people/feelers'
import type { Draft, PickId, Told } from './sceneInput'
import type { Doing } from './site/pictureOf'
import SiteScene from './SiteScene'
import { usePlate } from './usePlate'
import './scene.css'

export interface SiteStageProps {
  /** A second pick on what is chosen: what the hand would do. */
  readonly onAct?: (id: PickId) => void
  /** A long press. */
  readonly onLook?: (id: PickId) => void
  /** Given while a quantity asks for a point of the ground. */
  readonly onGroundPoint?: (point: GroundPoint, how: 'move' | 'press') => void
  readonly draft?: Draft | null
  /** Of a livening: where the feelers are; and what has happened by its second. */
  readonly feelers?: Feelers | null
  readonly told?: Told | null
  /** Given while a livening is drawn: the moment that it struck in, instead of the job as it is now. */
  readonly drawn?: {
    readonly belief: Belief
    readonly doing: readonly Doing[]
    readonly instant: Instant
    readonly ground?: Pick<GroundHazard, 'contour'>
  }
  /** Of a livening: the voltage of each part is written at it. */
  readonly hasFigures?: boolean
  /** Of a livening: given while a pick asks for a thing. */
  readonly onPick?: (id: PickId) => void
  readonly isFrozen?: boolean
  /** Stays at what is chosen. */
  readonly plate?: ReactNode
  /** What is written at what is pointed at or chosen. */
  readonly nameOf?: (id: PickId) => string
  readonly firstView?: ViewName
  /** Pixels at the right that the sheet covers. */
  readonly coveredRight?: number
  /** How high the bar is, pixels. */
  readonly onBar?: (height: number) => void
  /** After the buttons of the bar. */
  readonly extra?: ReactNode
  /** This machine cannot draw it, or stopped: show the drawings. */
  readonly onLost?: (how: 'none' | 'lost') => void
  readonly onRestored?: () => void
}

const nothing = (): void => undefined
const nobody: readonly string[] = []

export default function SiteStage({
  plate,
  extra,
  drawn,
  firstView,
  coveredRight = 0,
  nameOf,
  onBar = nothing,
  onAct = nothing,
  onPick,
  ...rest
}: SiteStageProps) {
  const now = useStore(jobStore, (job) => job.belief)
  const busy = useStore(jobStore, (job) => job.busy)
  const persons = useStore(viewStore, (view) => view.persons)
  const thing = useStore(viewStore, (view) => view.thing)
  const theme = useStore(settingsStore, (settings) => settings.theme)
  const reducedMotion = useReducedMotion()
  const [view, setView] = useState<ViewName>(firstView ?? (drawn ? 'over' : 'ground'))
  const [switchId, setSwitch] = useState<string | null>(null)
  const [asked, setAsked] = useState(0)
  const bar = useRef<HTMLDivElement>(null)
  const top = useHeightOf(bar)
  useEffect(() => onBar(top), [onBar, top])
  const [hovered, setHovered] = useState<PickId | null>(null)
  const { plateAt, nameAt, onFrame } = usePlate(thing, hovered, coveredRight)
  const { gaze, hasDimensions } = useStore(lookStore)
  const tape = useStore(tapeStore)
  useEffect(() => gazeAway, [])
  const belief = drawn?.belief ?? now
  const forms = useStore(formStore)
  const handling = useMemo(() => (now && !drawn ? handlingOf(forms, now) : null), [forms, now, drawn])
  if (!belief) return null
  const measured = drawn ? undefined : measureTape(belief, tape.ends)
  const people = belief.persons.map(({ id }) => id)
  const onSelect = (id: PickId | null): void => {
    if (id !== null && people.includes(id)) choosePersons([id])
    else chooseThing(id)
  }
  const named = hovered ?? (drawn ? null : thing)
  // Eyes are on the site, wherever the last view was; of whoever is at a switch, on that switch.
  const isSeenBySomebody = gaze?.kind === 'eyes'
  const seer = isSeenBySomebody ? belief.persons.find(({ id }) => id === gaze.person)?.place : undefined
  const seenSwitch = seer?.kind === 'switch' ? seer.id : null
  const look = (name: ViewName, device: string | null = null): void => {
    gazeAway()
    setAsked((times) => times + 1)
    setView(name)
    setSwitch(device)
  }
  return (
    <div className='scene-place'>
      <SiteScene
        {...rest}
        belief={belief}
        handling={handling}
        hasDimensions={hasDimensions && !drawn}
        doing={drawn?.doing ?? busy}
        instant={drawn?.instant ?? null}
        {...(drawn?.ground ? { zone: drawn.ground.contour } : {})}
        selection={drawn ? null : thing}
        persons={drawn ? nobody : persons}
        theme={theme}
        reducedMotion={reducedMotion}
        view={seenSwitch !== null ? 'switch' : isSeenBySomebody && view === 'switch' ? 'ground' : view}
        asked={asked}
        switchId={isSeenBySomebody ? seenSwitch : switchId}
        gaze={seenSwitch === null ? gaze : null}
        measured={measured}
        onTape={tape.isOut && !drawn ? holdTape : undefined}
        onHover={setHovered}
        inset={{ top, bottom: 0, right: coveredRight }}
        onSelect={drawn ? (id) => id !== null && onPick?.(id) : onSelect}
        onAct={onAct}
        onFrame={onFrame}
      />
      <div className='scene-bar' role='group' aria-label={say('scene.views')} ref={bar}>
        {viewNames
          .filter((name) => name !== 'switch')
          .map((name) => (
            <ViewButton
              key={name}
              isOn={gaze === null && view === name}
              onPress={() => look(name)}
              label={say(`scene.view.${name}`)}
            />
          ))}
        {belief.sheet.switches.map(({ id, label }) => (
          <ViewButton
            key={id}
            isOn={gaze === null && view === 'switch' && switchId === id}
            onPress={() => look('switch', id)}
            label={say('scene.view.switch', { label })}
          />
        ))}
        <LookButtons belief={belief} persons={persons} thing={thing} hasTape={!drawn} />
        {extra}
      </div>
      {nameOf && (
        <div className='scene-name' aria-hidden='true' ref={nameAt}>
          {named !== null && nameOf(named)}
        </div>
      )}
      {plate && (
        <div className='scene-plate' ref={plateAt}>
          {plate}
        </div>
      )}
    </div>
  )
}

const still = '(prefers-reduced-motion: reduce)'

function useReducedMotion(): boolean {
  return useSyncExternalStore(
    (changed) => {
      const query = matchMedia(still)
      query.addEventListener('change', changed)
      return () => query.removeEventListener('change', changed)
    },
    () => matchMedia(still).matches,
  )
}

function useHeightOf(element: { readonly current: HTMLElement | null }): number {
  const [height, setHeight] = useState(0)
  useLayoutEffect(() => {
    if (!element.current) return
    const watcher = new ResizeObserver(([entry]) => entry && setHeight(Math.round(entry.contentRect.height)))
    watcher.observe(element.current)
    return () => watcher.disconnect()
  }, [element])
  return height
}
