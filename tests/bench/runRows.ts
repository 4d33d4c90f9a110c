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
  const before = runTimeline(scenario, orders.slice(0, lastContact(orders)))
  const first = timed(createSweepCache, (cache) => sweep(timeline, cache), { first: 1, counted: 3 })
  const oneMore = timed(
    () => {
      const cache = createSweepCache()
      sweep(before, cache)
      return cache
    },
    (cache) => sweep(timeline, cache),
    { first: 1, counted: 3 },
  )
  const { states, livenings, corners } = sweep(before, createSweepCache())
  const note = `${orders.length} actions, ${states} states × ${livenings} × ${corners} corners`
  return [
    { name: 'sweep of the clean run, first', unit: 'ms', ...first, target: 2000, note },
    { name: 'the same, after one more action', unit: 'ms', ...oneMore, target: 200, note: 'the others kept' },
    gradeRow(orders, `${orders.length} actions`),
    gradeRow(orders.slice(0, shortJob), `its first ${shortJob} actions`),
  ]
}

/** The last order that makes a state which the sweep has not met: everything after it is left out with it. */
function lastContact(orders: readonly Order[]): number {
  const last = orders.findLastIndex(({ do: act }) => act === 'unclamp')
  return last < 0 ? orders.length - 1 : last
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
