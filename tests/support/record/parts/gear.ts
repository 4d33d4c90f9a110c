/** The tarp: everything is signed out, turned over, read, tested and judged by whoever will use it. */
import { gearCatalogue } from '../../../../src/engine'
import type { Choices } from '../choices'
import type { Recorder } from '../recorder'

/** What the job needs, by the person who inspects it. */
function kit({ boots, stick, lead, bond, rod, mainEarth }: Choices): Readonly<Record<string, readonly string[]>> {
  const worn = (who: 'pic' | 'pw' | 'gw'): readonly string[] => (boots[who] === null ? [] : [boots[who]])
  return {
    pw: [
      ...[lead, bond, stick, 'K-1', 'D-04', 'P-03', 'T-06', 'P-08', 'G-21', 'W-1'],
      ...['C-15', 'L-51', 'L-52', 'Y-1', 'Z-1', 'I-1'],
      ...worn('pw'),
    ],
    gw: [rod, 'H-1', 'W-2', 'Q-1', 'X-1', 'RK-1', ...worn('gw')],
    pic: ['N-1', ...worn('pic')],
    so: ['K-71', 'K-72', 'T-81', 'T-82', 'M-1', 'G-31', ...(mainEarth === null ? [] : [mainEarth])],
  }
}

export function gear(run: Recorder, choices: Choices): void {
  for (const id of choices.rejected) takeOut(run, 'pw', id, 'quarantine')
  for (const [who, list] of Object.entries(kit(choices))) for (const id of list) takeOut(run, who, id, 'pass')
  run.wait()
}

/** One item after the other, so that none is left half looked at. */
export function takeOut(run: Recorder, who: string, id: string, verdict: 'pass' | 'quarantine'): void {
  run.order('gw', 'book-out', { on: id })
  run.wait('gw')
  inspectWith(run, who, id, verdict)
  run.wait(who)
}

function inspectWith(run: Recorder, who: string, id: string, verdict: 'pass' | 'quarantine'): void {
  const item = run.site().items[id]
  if (Object.keys(item?.label ?? {}).length > 1) run.order(who, 'read-label', { on: id })
  run.order(who, 'look', { on: id })
  const isTested = gearCatalogue.get(item?.type ?? '')?.test !== undefined
  if (isTested) run.order(who, 'test-item', { on: id })
  run.order(who, 'judge', { on: id, values: { verdict } })
}
