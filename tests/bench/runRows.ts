/** The recorded clean run: swept, swept again after one more action, and graded without a sweep. */
import { createSweepCache, judgeRun, runTimeline, type Order } from '../../src/engine'
import { sweep } from '../../src/engine/hazard/sweep'
import { recorded, shippedPack } from '../support/rules/recorded'
import { timed, type Row } from './measure'

/** As many actions as the short job that the targets are said for. */
const shortJob = 90

export function runRows(): readonly Row[] {
  const { scenario, orders } = recorded('clean')
  const timeline = runTimeline(scenario, orders)
  const last = lastClamp(orders)
  const before = runTimeline(scenario, orders.slice(0, last))
  const after = runTimeline(scenario, orders.slice(0, last + 1))
  const first = timed(createSweepCache, (cache) => sweep(timeline, cache), { first: 1, counted: 3 })
  const oneMore = timed(
    () => {
      const cache = createSweepCache()
      sweep(before, cache)
      return cache
    },
    (cache) => sweep(after, cache),
    { first: 1, counted: 3 },
  )
  const { states, livenings, corners } = sweep(timeline, createSweepCache())
  const note = `${orders.length} actions, ${states} states × ${livenings} × ${corners} corners`
  return [
    { name: 'sweep of the clean run, first', unit: 'ms', ...first, target: 2000, note },
    { name: 'the same, after one more action', unit: 'ms', ...oneMore, target: 200, note: 'the last clamp goes on' },
    gradeRow(orders, `${orders.length} actions`),
    gradeRow(orders.slice(0, shortJob), `its first ${shortJob} actions`),
  ]
}

/** The last clamp that goes on: a circuit that was not there before, with everybody at what they are at. */
function lastClamp(orders: readonly Order[]): number {
  const last = orders.findLastIndex(({ do: act }) => act === 'clamp')
  if (last < 0) throw new Error('the clean run has no clamp')
  return last
}

function gradeRow(orders: readonly Order[], note: string): Row {
  const { scenario } = recorded('clean')
  const pack = shippedPack()
  const ms = timed(
    () => undefined,
    () => judgeRun(runTimeline(scenario, orders), pack, { sweep: false }),
    { first: 10, counted: 31 },
  )
  return {
    name: 'run folded and graded without a sweep',
    unit: '/s',
    measured: 1000 / ms.measured,
    best: 1000 / ms.best,
    target: 200,
    note,
  }
}
