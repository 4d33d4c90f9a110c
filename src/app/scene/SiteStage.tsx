/**
 * The scene as a part of the sheet: it reads the open job, the selection and the theme from the stores, picks go back
 * into them, and its own bar chooses where one looks from. Acts belong to the sheet that shows it: they come in as props.
 * Scene and panels meet only in stores, so main.tsx hands this component to the sheet.
 */
import { type ReactNode, useCallback, useLayoutEffect, useMemo, useRef, useState, useSyncExternalStore } from 'react'
import { useStore } from 'zustand'
import type { Belief, GroundPoint, Instant } from '../../engine'
import { say } from '../../text'
import { formStore } from '../stores/formStore'
import { handlingOf } from '../stores/handling'
import { jobStore } from '../stores/jobStore'
import { settingsStore } from '../stores/settingsStore'
import { choosePersons, chooseThing, viewStore } from '../stores/viewStore'
import { type ViewName, viewNames } from './camera/presets'
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
  readonly drawn?: { readonly belief: Belief; readonly doing: readonly Doing[]; readonly instant: Instant }
  readonly isFrozen?: boolean
  /** Stays at what is chosen. */
  readonly plate?: ReactNode
  readonly firstView?: ViewName
  /** Pixels at the right that the sheet covers. */
  readonly coveredRight?: number
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
  onAct = nothing,
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
  const bar = useRef<HTMLDivElement>(null)
  const top = useHeightOf(bar)
  const { plateAt, onFrame } = usePlate(thing)
  const belief = drawn?.belief ?? now
  const forms = useStore(formStore)
  const handling = useMemo(() => (now && !drawn ? handlingOf(forms, now) : null), [forms, now, drawn])
  if (!belief) return null
  const people = belief.persons.map(({ id }) => id)
  const onSelect = (id: PickId | null): void => {
    if (id !== null && people.includes(id)) choosePersons([id])
    else chooseThing(id)
  }
  const look = (name: ViewName, device: string | null = null): void => {
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
        selection={drawn ? null : thing}
        persons={drawn ? nobody : persons}
        theme={theme}
        reducedMotion={reducedMotion}
        view={view}
        switchId={switchId}
        inset={{ top, bottom: 0, right: coveredRight }}
        onSelect={drawn ? nothing : onSelect}
        onAct={onAct}
        onFrame={onFrame}
      />
      <div className='scene-bar' role='group' aria-label={say('scene.views')} ref={bar}>
        {viewNames
          .filter((name) => name !== 'switch')
          .map((name) => (
            <ViewButton key={name} isOn={view === name} onPress={() => look(name)} label={say(`scene.view.${name}`)} />
          ))}
        {belief.sheet.switches.map(({ id, label }) => (
          <ViewButton
            key={id}
            isOn={view === 'switch' && switchId === id}
            onPress={() => look('switch', id)}
            label={say('scene.view.switch', { label })}
          />
        ))}
        {extra}
      </div>
      {plate && (
        <div className='scene-plate' ref={plateAt}>
          {plate}
        </div>
      )}
    </div>
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
function usePlate(thing: string | null) {
  const plateAt = useRef<HTMLDivElement>(null)
  const onFrame = useCallback(
    (anchorOf: AnchorOf): void => {
      const plate = plateAt.current
      const stage = plate?.parentElement
      if (!plate || !stage) return
      const anchor = thing === null ? null : anchorOf(thing)
      plate.style.visibility = anchor ? 'visible' : 'hidden'
      if (!anchor) return
      const [width, height] = [plate.offsetWidth, plate.offsetHeight]
      const isRight = anchor.x + 28 + width <= stage.clientWidth
      const x = isRight ? anchor.x + 28 : Math.max(4, anchor.x - 28 - width)
      const y = Math.min(Math.max(60, anchor.y - height / 2), stage.clientHeight - height - 4)
      plate.style.transform = `translate(${x.toFixed(1)}px,${y.toFixed(1)}px)`
    },
    [thing],
  )
  return { plateAt, onFrame }
}
