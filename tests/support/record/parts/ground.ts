/** Signs, rescue, boots, barrier, rod and earth end. */
import type { GroundPoint } from '../../../../src/engine'
import type { Choices } from '../choices'
import type { Recorder } from '../recorder'

export const rodAt = { x: 2.6, y: -2.35 }
/** Outside the barrier: from there one watches. */
const lookout = { x: -6.5, y: 4 }
/** At the tail of the handline, 3.3 m from the pole and twice that from the rod. */
const ropeStand = { x: -2.6, y: 2 }

/** Four sides, each so far from whichever of pole, rod and stay anchor is nearest to it: north, east, south, west. */
function outlineAt(metres: number): readonly GroundPoint[] {
  const [north, east, south, west] = [metres, 2.6 + metres, -5.5 - metres, -metres]
  return [
    { x: west, y: south },
    { x: east, y: south },
    { x: east, y: north },
    { x: west, y: north },
  ]
}

export function groundWork(run: Recorder, choices: Choices): void {
  run.order('gw', 'set-signs', { with: 'X-1' })
  run.order('gw', 'stage-rescue', { with: 'RK-1', values: { rescuer: 'gw' } })
  for (const who of ['pic', 'pw', 'gw'] as const) {
    const boots = choices.boots[who]
    if (boots !== null) run.order(who, 'wear', { on: boots })
  }
  run.order('pw', 'wear', { on: 'Y-1' })
  run.wait()
  run.order('gw', 'wear', { on: 'W-2' })
  run.order('gw', 'locate-services', { values: { at: rodAt } })
  run.order('gw', 'set-barrier', { with: 'Q-1', values: { outline: outlineAt(choices.barrier) } })
  run.wait()
  run.order('gw', 'walk', { values: { to: rodAt } })
  run.order('gw', 'drive-rod', { with: choices.rod, values: { at: rodAt, depth: 1.8 } })
  if (!choices.isConductorEndFirst) earthEnd(run, choices)
  fromRope(run)
}

export function toRope(run: Recorder): void {
  run.order('gw', 'walk', { values: { to: ropeStand } })
  run.wait('gw')
}

/** Out of the barrier before a clamp is touched. */
export function fromRope(run: Recorder): void {
  run.order('gw', 'walk', { values: { to: lookout } })
}

export function earthEnd(run: Recorder, { lead, rod }: Choices): void {
  run.order('gw', 'clamp-earth-end', { with: lead, on: `rod/${rod}`, values: { turns: 6 } })
  run.order('gw', 'lay-lead', { with: lead, values: { route: 'clear-of-lv' } })
}
