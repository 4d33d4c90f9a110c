/**
 * Whoever the livening struck so that the heart may stop (IEC 60479-1, zone AC-4) does nothing more, where the place says so;
 * the others see it. What the zone of the bare thigh is: pinnedFigures.test.ts, 12 A.
 */
import { expect, test } from 'vitest'
import { believe, runTimeline, type Order, type OpenTimeline } from '../../../src/engine'
import { recorded } from '../../support/cleanStages'
import { hanging } from '../actions/casualtyCases'
import { actions } from '../../../src/engine/actions/registry'

const bare = recorded('no-cover-holed-boots')
const struckAt = bare.struck!.at

/** The run up to the strike, and what follows. */
function after(casualties: boolean, ...orders: readonly Order[]): OpenTimeline {
  const run = bare.entries.map(({ order }) => order).filter(({ at }) => at <= struckAt)
  return runTimeline({ ...bare.scenario, casualties }, [...run, ...orders])
}

const still = (who: string): Order => ({ at: struckAt + 5, who, do: 'keep-still', values: {} })

test('the pole worker with a bare thigh on bare concrete lies there; nobody else does', () => {
  const { end } = after(true, still('pic'))
  expect(end.hurt).toEqual(['pw'])
  expect(end.evidence.filter((it) => it.says === 'livening.somebody-down').map((it) => [it.who, it.of])).toEqual([
    ['gw', 'pw'],
    ['pic', 'pw'],
    ['so', 'pw'],
  ])
  expect(
    believe(end)
      .persons.filter((it) => it.isHurt)
      .map((it) => it.id),
  ).toEqual(['pw'])
})

test('and does nothing more, while the others go on', () => {
  const { entries } = after(true, still('pic'), still('pw'))
  expect(entries.slice(-2).map((it) => it.refusal?.code ?? it.outcome)).toEqual(['done', 'keep-still/hurt'])
})

test('where the place does not say so everybody goes on as before', () => {
  const { end, entries } = after(false, still('pw'))
  expect([end.hurt, entries.at(-1)?.outcome]).toEqual([undefined, 'done'])
})

test('whoever takes hold of them has both hands on them: path 20', () => {
  const order: Order = { at: 0, who: 'gw', do: 'bring-down', with: 'RK-1', values: { whom: 'pw' } }
  const act = actions.get('bring-down')!
  expect(act.contacts!(hanging(), order).map((it) => [it.person, it.contact.limb, it.contact.on])).toEqual([
    ['gw', 'left-hand', { kind: 'person', id: 'pw' }],
    ['gw', 'right-hand', { kind: 'person', id: 'pw' }],
  ])
  const short = hanging()
  const kit = { ...short.items['RK-1']!, defects: ['short-rope'] }
  // A rope that does not reach the ground has to be lengthened first.
  expect(act.takes({ ...short, items: { ...short.items, 'RK-1': kit } }, order)).toBe(2 * act.takes(short, order))
})
