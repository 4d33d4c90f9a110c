/**
 * The scene as a part of the sheet: it reads the open job, the selection and the theme from the stores, picks go back
 * into them, and its own bar chooses where one looks from. Acts belong to the sheet that shows it: they come in as props.
 * Scene and panels meet only in stores, so main.tsx hands this component to the sheet.
 */
import {
  type ReactNode,
  useCallback,
  useEffect,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
  useSyncExternalStore,
} from 'react'
import { useStore } from 'zustand'
import type { Belief, GroundHazard, GroundPoint, Instant } from '../../engine'
import { roleLetters, say } from '../../text'
import { formStore } from '../stores/formStore'
import { handlingOf } from '../stores/handling'
import { jobStore } from '../stores/jobStore'
import { gazeAt, gazeAway, lookStore } from '../stores/lookStore'
import { measureTape } from '../stores/measureTape'
import { settingsStore } from '../stores/settingsStore'
import { holdTape, putTapeAway, takeTape, tapeStore } from '../stores/tapeStore'
import { choosePersons, chooseThing, viewStore } from '../stores/viewStore'
import { type ViewName, viewNames } from './camera/presets'
import type { Box } from './labels/labelLayer'
import type { AnchorOf, Draft, PickId } from './sceneInput'
import type { Doing } from './site/pictureOf'
import SiteScene from './SiteScene'
import './scene.css'

export interface SiteStageProps {
  /** A second pick on what is chosen: what the hand would do. */
  readonly onAct?: (id: PickId) => void
  /** A long press. */
  readonly onLook?: (id: PickId) => void
  /** Given while a quantity asks for a point of the ground. */
  readonly onGroundPoint?: (point: GroundPoint, how: 'move' | 'press') => void
  readonly draft?: Draft | null
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
  const gaze = useStore(lookStore, (look) => look.gaze)
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

interface LookProps {
  readonly belief: Belief
  readonly persons: readonly string[]
  readonly thing: PickId | null
  readonly hasTape: boolean
}

/** From the eyes of who is chosen, up at what is overhead, close at what is chosen; and the tape. */
function LookButtons({ belief, persons, thing, hasTape }: LookProps) {
  const gaze = useStore(lookStore, (it) => it.gaze)
  const isTapeOut = useStore(tapeStore, (it) => it.isOut)
  const seeing = belief.persons.find(({ id }) => id === persons[0])
  return (
    <>
      {seeing && (
        <ViewButton
          isOn={gaze?.kind === 'eyes' && gaze.person === seeing.id}
          onPress={() => gazeAt({ kind: 'eyes', person: seeing.id })}
          label={say('scene.eyes', { person: roleLetters(seeing.role) })}
        />
      )}
      <ViewButton isOn={gaze?.kind === 'up'} onPress={() => gazeAt({ kind: 'up' })} label={say('scene.up')} />
      {thing !== null && hasTape && (
        <ViewButton
          isOn={gaze?.kind === 'near' && gaze.id === thing}
          onPress={() => gazeAt({ kind: 'near', id: thing })}
          label={say('scene.closer')}
        />
      )}
      {hasTape && (
        <ViewButton
          isOn={isTapeOut}
          onPress={() => (isTapeOut ? putTapeAway() : takeTape())}
          label={say('scene.tape')}
        />
      )}
    </>
  )
}

function ViewButton({ isOn, onPress, label }: { isOn: boolean; onPress: () => void; label: string }) {
  return (
    <button type='button' className='scene-view' aria-pressed={isOn} onClick={onPress}>
      {label}
    </button>
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

/** Moves the plate with the picture, without React: it sits right of its thing, left when there is no room. */
function usePlate(thing: string | null, hovered: string | null, coveredRight: number) {
  const nameAt = useRef<HTMLDivElement>(null)
  const plateAt = useRef<HTMLDivElement>(null)
  const onFrame = useCallback(
    (anchorOf: AnchorOf): Box | null => {
      const covered = placeName(nameAt.current, anchorOf, hovered ?? thing, coveredRight)
      const plate = plateAt.current
      const stage = plate?.parentElement
      if (!plate || !stage) return covered
      const anchor = thing === null ? null : anchorOf(thing)
      plate.style.visibility = anchor ? 'visible' : 'hidden'
      if (!anchor) return covered
      const [width, height] = [plate.offsetWidth, plate.offsetHeight]
      const isRight = anchor.x + 28 + width <= stage.clientWidth
      const x = isRight ? anchor.x + 28 : Math.max(4, anchor.x - 28 - width)
      const y = Math.min(Math.max(60, anchor.y - height / 2), stage.clientHeight - height - 4)
      plate.style.transform = `translate(${x.toFixed(1)}px,${y.toFixed(1)}px)`
      return covered
    },
    [thing, hovered, coveredRight],
  )
  return { plateAt, nameAt, onFrame }
}

/** Above its thing, inside the picture. */
function placeName(name: HTMLElement | null, anchorOf: AnchorOf, id: string | null, coveredRight: number): Box | null {
  const stage = name?.parentElement
  if (!name || !stage) return null
  const anchor = id === null ? null : anchorOf(id)
  name.style.visibility = anchor ? 'visible' : 'hidden'
  if (!anchor) return null
  const x = Math.min(Math.max(4, anchor.x + 14), stage.clientWidth - coveredRight - name.offsetWidth - 4)
  const y = Math.max(50, anchor.y - name.offsetHeight - 12)
  name.style.transform = `translate(${x.toFixed(1)}px,${y.toFixed(1)}px)`
  return [x - 4, y - 2, x + name.offsetWidth + 4, y + name.offsetHeight + 2]
}
