/**
 * The job done for show: by every pack, from what is perceived. Order of the trade: isolate before the permit, prove before
 * the clamp, earths on before the work, off in reverse (common practice, no source).
 */
import { describe, expect, test } from 'vitest'
import { demonstrate, drawScenario, type Order, type Scenario } from '../../../src/engine'
import { findFindings } from '../../../src/engine/rules/findFindings'
import { packOf, scenarioBase } from '../../support/record/shelf'

const packs = ['concrete-rod', 'multi-ground', 'two-earths'] as const
const base = scenarioBase('marrow-bend')
const drawn = (seed: number): Scenario => drawScenario(base, seed, 'practise')

const firstOf = (orders: readonly Order[], act: string): number => orders.findIndex((it) => it.do === act)
const lastOf = (orders: readonly Order[], act: string): number => orders.findLastIndex((it) => it.do === act)

/** The same place with something more wrong with an item. */
const withDefect = (scenario: Scenario, id: string, defect: string): Scenario => ({
  ...scenario,
  items: scenario.items.map((it) => (it.id === id ? { ...it, defects: [...it.defects, defect] } : it)),
})

describe('the job as it is shown', () => {
  test.each(packs)('%s: a quiet job without a finding, in the order of the trade', (id) => {
    const { orders, timeline, declined } = demonstrate(drawn(2), packOf(id))
    expect(declined).toBeNull()
    expect(findFindings(timeline, packOf(id))).toEqual([])
    const acts = [
      'open-switch',
      'lock',
      'take-permit',
      'set-barrier',
      'drive-rod',
      'clamp-earth-end',
      'say-dead',
      'clamp',
    ]
    const order = [...acts, 'bond-line', 'declare-safe', 'untie', 'confirm-complete', 'unbond-line', 'unclamp']
    const places = [...order, 'pull-rod', 'return-permit', 'take-in-barrier', 'close-switch', 'close-job'].map((act) =>
      firstOf(orders, act),
    )
    expect(places).not.toContain(-1)
    expect([...places].sort((a, b) => a - b)).toEqual(places)
    expect(timeline.end.insulator).toBe('replaced')
    expect(timeline.end.paper).toMatchObject({ permit: 'returned', closed: true })
  })

  test('a cover where the pack wants one on a pole that conducts, earths at the switch where the permit waits for them', () => {
    const acts = (id: string): readonly string[] => demonstrate(drawn(2), packOf(id)).orders.map((it) => it.do)
    expect(packs.map((id) => acts(id).includes('fit-cover'))).toEqual([true, false, true])
    expect(packs.map((id) => acts(id).includes('earth-isolation-point'))).toEqual([false, false, true])
  })

  test('a hidden fault changes nothing before the look that finds it, and then another of the kind is taken', () => {
    const sound = demonstrate(drawn(2), packOf('concrete-rod')).orders
    const holed = demonstrate(withDefect(drawn(2), 'BT-42', 'nail-hole-left'), packOf('concrete-rod')).orders
    const look = sound.findIndex((it) => it.do === 'judge' && it.on === 'BT-42')
    expect(holed.slice(0, look)).toEqual(sound.slice(0, look))
    expect(holed[look]).toMatchObject({ on: 'BT-42', values: { verdict: 'quarantine' } })
    const worn = holed.filter((it) => it.do === 'wear' && it.who === 'pw').map((it) => it.on)
    expect(worn).not.toContain('BT-42')
    // Size 43 on a foot of 44: the spare pair.
    expect(worn).toContain('BT-45')
  })

  test('what only a test finds is found too', () => {
    const { orders } = demonstrate(withDefect(drawn(2), 'S-11', 'wet-core'), packOf('concrete-rod'))
    expect(orders.find((it) => it.do === 'judge' && it.on === 'S-11')?.values.verdict).toBe('quarantine')
    expect(orders.some((it) => it.do === 'haul' && it.on === 'S-12')).toBe(true)
  })

  test('a blade that hangs: no permit, no climb, all as it was found', () => {
    const { orders, timeline, declined } = demonstrate(drawn(3), packOf('concrete-rod'))
    expect(declined).toEqual({ why: 'blade-closed', about: 'switch-27/B' })
    expect(orders.filter((it) => ['take-permit', 'climb', 'drive-rod'].includes(it.do))).toEqual([])
    expect(timeline.end.paper).toMatchObject({ stopped: true, closed: true, permit: 'none' })
    expect(timeline.end.switches['switch-27']).toMatchObject({ handle: 'closed', lock: null })
  })

  test('the line comes alive: everybody keeps still, the source is off and the line proved before anybody moves', () => {
    const { orders, timeline, declined } = demonstrate(drawn(1), packOf('concrete-rod'))
    expect(declined).toBeNull()
    const at = timeline.struck!.at
    const after = orders.filter((it) => it.at > at)
    expect(after.slice(0, 4).map((it) => it.do)).toEqual(Array(4).fill('keep-still'))
    expect(lastOf(after, 'ask-source-off')).toBeLessThan(firstOf(after, 'test'))
    expect(lastOf(after, 'declare-safe')).toBeLessThan(firstOf(after, 'untie'))
    // What was on the line then is not used again.
    expect(after.filter((it) => it.do === 'clamp').map((it) => it.with)).not.toContain('E-07')
    expect(timeline.end.items['E-07']?.verdict).toBe('quarantine')
  })

  test('the next pole is left for another day, unless the pack has rules for it: then all is done anew there', () => {
    const scenario = drawScenario(scenarioBase('ironstone-park'), 2, 'practise')
    const pack = packOf('concrete-rod')
    const silent = pack.rules.filter((it) => !JSON.stringify(it).includes('next-pole'))
    const left = demonstrate(scenario, { ...pack, rules: silent })
    expect(left.orders.map((it) => it.do)).toContain('decline-next-pole')
    const both = demonstrate(scenario, pack)
    const swapped = both.orders.filter((it) => it.do === 'swap-insulator').map((it) => it.on)
    expect(swapped).toEqual(['conductor-b', 'conductor-b@next'])
    // The earths of the first pole are off before anything goes on at the next.
    const clamped = both.orders.filter((it) => ['clamp', 'unclamp'].includes(it.do)).map((it) => `${it.do} ${it.on}`)
    expect(clamped.slice(3, 6).every((it) => it.startsWith('unclamp') && !it.endsWith('@next'))).toBe(true)
    expect(clamped.slice(6, 9).every((it) => it.startsWith('clamp') && it.endsWith('@next'))).toBe(true)
    expect(both.timeline.end.clamps).toEqual([])
  })
})
