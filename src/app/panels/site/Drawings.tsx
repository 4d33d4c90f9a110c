/** Elevation and plan of the crew's picture, with a ring at the chosen thing; or the scene, when it is chosen. */
import { Suspense, useCallback, useContext, useEffect, useMemo, useState } from 'react'
import { useStore } from 'zustand'
import { say } from '../../../text'
import { aimAt, aimStore, type Spot, tidySpot } from '../../stores/aimStore'
import { isSlipOut, showDrawing, viewStore } from '../../stores/viewStore'
import { jobStore } from '../../stores/jobStore'
import { type Measured, measureTape } from '../../stores/measureTape'
import { holdTape, tapeStore } from '../../stores/tapeStore'
import { SiteElevation } from '../drawing/SiteElevation'
import { SitePlan } from '../drawing/SitePlan'
import type { Scale } from '../drawing/pen'
import type { SiteView } from '../drawing/siteView'
import { TapeMark } from '../drawing/TapeMark'
import { viewOfSite } from '../drawing/viewOfSite'
import { useBelief } from '../useBelief'
import { useSpeaker } from '../useSpeaker'
import { ShownSlip } from '../shown/ShownSlip'
import { ActionSlip, thingName } from './ActionSlip'
import { focusActs } from './focus'
import { actOnThing, giveNamedTo } from './giving'
import { StageSlot } from './stageSlot'
import { TapeSlip } from './TapeSlip'

export function Drawings() {
  // Of the picture's bar; the slip lies under it, or under the plan.
  const [bar, setBar] = useState<number | null>(null)
  const isShowing = useStore(jobStore, (job) => job.head?.isShowing === true)
  const Slip = isShowing ? ShownSlip : ActionSlip
  return (
    <>
      <Picture onBar={setBar} />
      <TapeSlip />
      <Slip top={bar === null ? undefined : bar + air} />
    </>
  )
}

function Picture({ onBar }: { onBar: (height: number | null) => void }) {
  const isScene = useStore(viewStore, (view) => view.drawing === 'scene')
  const hasSlip = useHasSlip()
  const Stage = useContext(StageSlot)
  const [lost, setLost] = useState<'none' | 'lost' | null>(null)
  const placing = usePlacing()
  const nameOf = useNames()
  const isShown = Stage !== null && isScene
  useEffect(() => {
    if (!isShown || lost !== null) onBar(null)
  }, [isShown, lost, onBar])
  return (
    <>
      {lost && isScene && (
        <p className='note' role='status'>
          {say(`scene.${lost}`)}
        </p>
      )}
      {isShown && lost !== 'none' && (
        <div className='stagebox' hidden={lost !== null}>
          <Suspense fallback={<p className='note'>{say('scene.loading')}</p>}>
            <Stage
              onAct={() => void (actOnThing() || focusActs())}
              onLook={(id) => giveNamedTo('look', viewStore.getState().persons, id)}
              {...placing}
              coveredRight={hasSlip ? slipWidth : 0}
              onBar={onBar}
              nameOf={nameOf}
              extra={<SwitchTo drawing='drawings' label={say('scene.leave')} />}
              onLost={setLost}
              onRestored={() => setLost(null)}
            />
          </Suspense>
        </div>
      )}
      {(!isShown || lost !== null) && (
        <>
          {Stage && lost === null && <SwitchTo drawing='scene' label={say('scene.open')} />}
          <Sheets />
        </>
      )}
    </>
  )
}

/** A job that is shown says all the time what is done. */
function useHasSlip(): boolean {
  const isOut = useStore(viewStore, isSlipOut)
  return useStore(jobStore, (job) => job.head?.isShowing === true) || isOut
}

/** A person by name, everything else as the site list has it. */
function useNames(): (id: string) => string {
  const belief = useBelief()
  const speaker = useSpeaker()
  return useCallback(
    (id) => (belief.persons.some((it) => it.id === id) ? speaker.say(`person.${id}`) : thingName(speaker, belief, id)),
    [belief, speaker],
  )
}

/** While an order asks for a point of the ground, the scene's pointer sets it; what is set has handles of its own. */
function usePlacing() {
  const { aim, at } = useStore(aimStore)
  if (!aim) return {}
  const isBegun = aim.set.length > 0
  return {
    onGroundPoint: aimAt,
    draft: { rod: isBegun ? null : at, outline: isBegun && aim.isOpen && at ? [...aim.set, at] : [] },
  }
}

/** The action slip lies beside what the picture is about: pixels of the right, its air included. */
const slipWidth = 336
/** Above the picture, pixels: as in the style sheet. */
const air = 12

function SwitchTo({ drawing, label }: { drawing: 'drawings' | 'scene'; label: string }) {
  return (
    <button type='button' className='btn plain drawingswitch' onClick={() => showDrawing(drawing)}>
      {label}
    </button>
  )
}

/** The slip lies under the plan; when it is put away the plan shows what is about. */
const planBesideSlip = { width: 352, height: 172, perMetre: 8.6, origin: [184, 104] } as const
const planAlone = { width: 352, height: 456, perMetre: 8.6, origin: [184, 236] } as const

function Sheets() {
  const hasSlip = useHasSlip()
  const belief = useBelief()
  const persons = useStore(viewStore, (view) => view.persons)
  const thing = useStore(viewStore, (view) => view.thing)
  const site = viewOfSite(belief)
  const { isOut: isTapeOut, ends } = useStore(tapeStore)
  const measured = useMemo(() => measureTape(belief, ends), [belief, ends])
  return (
    <div className='sheetdrawings'>
      <SiteElevation
        site={site}
        width={352}
        height={456}
        perMetre={39}
        origin={[126, 388]}
        title={say('drawing.elevation')}
      >
        {(scale) => (
          <>
            <Ring thing={thing} site={site} scale={scale} />
            {measured && <TapeAcross measured={measured} scale={scale} />}
          </>
        )}
      </SiteElevation>
      <SitePlan
        site={site}
        frame={hasSlip ? planBesideSlip : planAlone}
        selectedPersons={persons}
        title={say('drawing.plan')}
        {...(isTapeOut ? { onPoint: (at: Spot) => holdTape({ kind: 'ground', at: tidySpot(at) }) } : {})}
      >
        {(scale) => measured && <TapeOver measured={measured} scale={scale} />}
      </SitePlan>
    </div>
  )
}

interface TapeProps {
  readonly measured: Measured
  readonly scale: Scale
}

const TapeOver = ({ measured: { from, to, over }, scale }: TapeProps) => (
  <TapeMark from={[scale.x(from.x), scale.y(from.y)]} to={[scale.x(to.x), scale.y(to.y)]} length={over} />
)

/** The elevation looks along the line: it shows true what lies across it. */
const TapeAcross = ({ measured: { from, to }, scale }: TapeProps) => (
  <TapeMark
    from={[scale.x(-from.y), scale.y(from.z)]}
    to={[scale.x(-to.y), scale.y(to.z)]}
    length={Math.hypot(to.y - from.y, to.z - from.z)}
  />
)

function Ring({ thing, site, scale }: { thing: string | null; site: SiteView; scale: Scale }) {
  const wire = [...site.wires, ...site.lv].find((it) => it.id === thing)
  const rod = site.rods.find((it) => `rod/${it.id}` === thing)
  const at = wire
    ? ([scale.x(-wire.across), scale.y(wire.height)] as const)
    : rod
      ? ([scale.x(-rod.y), scale.y(0.2)] as const)
      : thing === 'arm'
        ? ([scale.x(-0.5), scale.y(site.pole.arm)] as const)
        : thing === 'cover' && site.cover
          ? ([scale.x(0), scale.y((site.cover.from + site.cover.to) / 2)] as const)
          : null
  return at && <circle cx={at[0]} cy={at[1]} r='11' className='d-acc' style={{ strokeWidth: 'var(--p-wire)' }} />
}
