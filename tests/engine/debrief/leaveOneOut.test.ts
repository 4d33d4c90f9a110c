/**
 * The recorded clean run with one act left out, swapped with the same person's next, repeated, or done by somebody
 * else. Each must be refused by the world, found by the pack, or change what reaches somebody. What may go unanswered
 * stands in a list with the reason that a line worker would give.
 */
import { beforeAll, describe, expect, it } from 'vitest'
import { actions, createSweepCache, judgeRun, type Order, type Result, type Timeline } from '../../../src/engine'
import { weigh } from '../../../src/engine/debrief/outcome'
import { findFindings } from '../../../src/engine/rules/findFindings'
import { placesOf } from '../../support/rules/edits'
import { recorded, shippedPack } from '../../support/rules/recorded'
import { replayer, type Replayer } from '../../support/rules/replay'
import { listVariants, type Variant } from '../../support/rules/variants'

const pack = shippedPack()
const { scenario, orders } = recorded('clean')
const cache = createSweepCache()
let again: Replayer
let clean: Result

beforeAll(() => {
  again = replayer(scenario, orders)
  clean = judgeRun(again.run(orders), pack, { sweep: true, cache })
}, 120_000)

/** At most eight, and none of the paragraphs A23 to A88. */
const mayBeUnanswered: readonly { readonly isMeant: (variant: Variant) => boolean; readonly reason: string }[] = [
  {
    isMeant: ({ edit, name }) => edit === 'swap' && /^pic mark-hazard .* <> pic mark-hazard /.test(name),
    reason: 'The hazards of a site have no order among themselves: all are marked before the briefing.',
  },
]

/** Everything that reached anybody, worst of each person and path. */
const exposuresOf = (result: Result): string =>
  JSON.stringify(
    result.sweep.map(({ person, path, verdict, exposure, ratios }) => ({ person, path, verdict, exposure, ratios })),
  )

function isAnswered({ orders: edited }: Variant): boolean {
  const timeline = again.runUnrefused(edited)
  if (timeline === undefined) return true
  if (findFindings(timeline, pack).length > 0) return true
  return exposuresOf(judgeRun(timeline, pack, { sweep: true, cache })) !== exposuresOf(clean)
}

it('passes when nothing is changed', () => {
  expect(clean.outcome).toBe('pass')
  expect(clean.findings).toEqual([])
})

it('answers every change of a single act', { timeout: 600_000 }, () => {
  const variants = listVariants(orders, ['pic', 'so', 'gw', 'pw'])
  const unanswered = variants.filter((variant) => !isAnswered(variant))
  const strangers = unanswered.filter((variant) => !mayBeUnanswered.some(({ isMeant }) => isMeant(variant)))
  expect(strangers.map(({ edit, index, name }) => `${edit} ${index} ${name}`)).toEqual([])
  expect(unanswered.length).toBeLessThanOrEqual(8)
  expect(unanswered.flatMap(({ index }) => paragraphsOf(orders[index]!)).filter(isBetweenA23AndA88)).toEqual([])
  expect(variants.length).toBeGreaterThan(4 * orders.length - 10)
})

const paragraphsOf = (order: Order): readonly string[] => actions.get(order.do)?.covers ?? []
const isBetweenA23AndA88 = (paragraph: string): boolean =>
  Number(paragraph.slice(1)) >= 23 && Number(paragraph.slice(1)) <= 88

/** Left out alone, and with what only undoes it: each of these may never pass. */
const neverPasses: readonly (readonly string[])[] = [
  ...['lv-a', 'lv-b', 'lv-n', 'lv-c', 'conductor-a', 'conductor-b', 'conductor-c'].map((on) => [`pw test ${on}`]),
  ...['pw prove T-06 #1', 'pw prove T-06 #2', 'pw prove D-04 #1', 'pw prove D-04 #2'].map((name) => [name]),
  ...['a', 'b', 'c'].map((wire) => [
    `pw clamp conductor-${wire}`,
    `pw tug conductor-${wire}`,
    `pw unclamp conductor-${wire}`,
  ]),
  ...['a', 'b', 'c'].map((wire) => [`pw tug conductor-${wire}`]),
  ['pw fit-cover', 'pw look cover', 'pw remove-cover'],
  ['pw bond-metal', 'pw bond-line', 'pw unbond-line', 'pw unbond-metal'],
  ['pw bond-metal', 'pw unbond-metal'],
  ['pw bond-line', 'pw unbond-line'],
  ...['pic BT-41', 'pw BT-42', 'gw BT-43'].flatMap((own) => {
    const [who = '', boots = ''] = own.split(' ')
    return ['read-label', 'look', 'test-item', 'judge'].map((verb) => [`${who} ${verb} ${boots}`])
  }),
  ...['pic BT-41', 'pw BT-42', 'gw BT-43'].map((own) => {
    const [who = '', boots = ''] = own.split(' ')
    return [`${who} wear ${boots}`, `${who} take-off ${boots}`]
  }),
  ['gw set-barrier', 'gw take-in-barrier'],
  ['so lock switch-27', 'so unlock switch-27'],
  ['so lock switch-31', 'so unlock switch-31'],
  ...['switch-27/A #1', 'switch-27/B #1', 'switch-27/C #1', 'switch-31/A', 'switch-31/B', 'switch-31/C'].map((on) => [
    `so look ${on}`,
  ]),
  ['pw fit-guard lv-b', 'pw remove-guard lv-b'],
  ['pw fit-guard lv-n', 'pw remove-guard lv-n'],
  ['pic call-clear #1'],
  ['pic call-clear #2'],
  ['pic head-count'],
  ...['E-07', 'B-02', 'S-11', 'K-1', 'D-04', 'R-1', 'C-15', 'L-51', 'L-52'].map((item) => [`gw book-in ${item}`]),
]

describe('left out, never a pass', () => {
  it.each(neverPasses.map((names) => [names.join(', '), names] as const))('%s', { timeout: 60_000 }, (_name, names) => {
    const alone = withoutOnly(names.slice(0, 1))
    const undone = withoutOnly(names)
    for (const timeline of [alone, undone]) {
      const findings = findFindings(timeline, pack)
      const { criticals } = weigh(findings)
      if (criticals > 0) continue
      const result = judgeRun(timeline, pack, { sweep: true, cache })
      expect(result.outcome, findings.map(({ rule }) => rule).join(' ')).not.toBe('pass')
    }
  })
})

function withoutOnly(names: readonly string[]): Timeline {
  const gone = names.flatMap((name) => placesOf(orders, name))
  return again.run(orders.filter((_, i) => !gone.includes(i)))
}
