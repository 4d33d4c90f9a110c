/**
 * What the demonstration does where a place asks for something else: a bucket instead of the pole, thick copper, a crossing
 * that stays in service, thunder, a label that says the wrong thing. Each from the trade (common practice, no source) where
 * nothing else is said.
 */
import { describe, expect, test } from 'vitest'
import { demonstrate, drawScenario, type Order, type Scenario } from '../../../src/engine'
import { findFindings } from '../../../src/engine/rules/findFindings'
import { packOf, scenarioBase } from '../../support/record/shelf'

const place = (slug: string): Scenario => drawScenario(scenarioBase(slug), 2, 'practise')
const pack = packOf('concrete-rod')
const firstOf = (orders: readonly Order[], act: string): number => orders.findIndex((it) => it.do === act)

describe('from the bucket', () => {
  const rustmesa = place('rustmesa-junction')
  const { orders, timeline } = demonstrate(rustmesa, packOf('multi-ground'))
  const acts = ['set-outriggers', 'try-lower-controls', 'enter-bucket', 'strap-on', 'bond-truck', 'move-bucket']
  const after = [...acts, 'untie', 'stow-bucket', 'unbond-truck', 'unstrap', 'leave-bucket', 'lift-outriggers']

  test('where the truck has a boom and the pack has rules for it; nobody climbs', () => {
    expect(firstOf(orders, 'climb')).toBe(-1)
    const places = after.map((act) => firstOf(orders, act))
    expect(places).not.toContain(-1)
    expect([...places].sort((a, b) => a - b)).toEqual(places)
    expect(findFindings(timeline, packOf('multi-ground'))).toEqual([])
  })

  test('nobody on the ground has a hand on the truck while it is on the earth at the pole', () => {
    const [from, to] = [firstOf(orders, 'bond-truck'), firstOf(orders, 'unbond-truck')]
    const byHand = ['set-outriggers', 'lift-outriggers', 'enter-bucket', 'leave-bucket', 'try-lower-controls']
    const meanwhile = orders.slice(from, to).filter(({ do: act }) => byHand.includes(act))
    expect(meanwhile).toEqual([])
  })

  test('the pole is climbed where the boom is not sound', () => {
    const items = rustmesa.items.map((it) => (it.type === 'bucket-boom' ? { ...it, defects: ['liner-crack'] } : it))
    const climbed = demonstrate({ ...rustmesa, items }, packOf('multi-ground'))
    expect(firstOf(climbed.orders, 'enter-bucket')).toBe(-1)
    expect(firstOf(climbed.orders, 'climb')).toBeGreaterThan(0)
    expect(climbed.declined).toBeNull()
  })
})

// 19.05 kV to earth over 1.89 ohm for 0.54 s: 37 mm² from 20 to 320 °C (IEC 60949); the next that is made is 50 (IEC 60228).
test('copper by the fault of the sheet, where that asks for more than the pack', () => {
  const { orders } = demonstrate(place('highfell-crossing'), pack)
  expect(orders.find((it) => it.do === 'choose-earths')?.values.area).toBe(50)
})

describe('a crossing that nobody switches off and whose reclose stays on', () => {
  const highfell = place('highfell-crossing')
  const actsWith = (control: Partial<Scenario['control']>): readonly string[] =>
    demonstrate({ ...highfell, control: { ...highfell.control, ...control } }, pack).orders.map((it) => it.do)

  test('is cut off by jumpers, and these are put in again', () => {
    const acts = actsWith({ blocksReclose: false })
    expect(acts).toContain('ask-jumpers-out')
    expect(acts).not.toContain('ask-crossing-guard')
    expect(acts.indexOf('ask-jumpers-in')).toBeGreaterThan(acts.indexOf('return-permit'))
  })

  test('is guarded where nobody can come for the jumpers', () => {
    expect(actsWith({ blocksReclose: false, takesJumpersOut: false })).toContain('ask-crossing-guard')
  })

  test('is left as it is where its reclose is off', () => {
    expect(actsWith({})).not.toContain('ask-jumpers-out')
  })
})

test('thunder: stop, tie in, down; the earths stay on; up again when the sky was read to be quiet', () => {
  const kestrel = place('kestrel-flat')
  const untied = demonstrate(kestrel, pack).orders.find((it) => it.do === 'untie')!.at
  const weatherChanges = [
    { at: untied + 60, thunder: true },
    { at: untied + 1500, thunder: false },
  ]
  const { orders, timeline, declined } = demonstrate({ ...kestrel, weatherChanges }, pack)
  const since = orders.slice(firstOf(orders, 'stop-job'))
  const acts = ['stop-job', 'retie', 'climb', 'read-weather', 'start-again', 'swap-insulator', 'unclamp']
  const places = acts.map((act) => firstOf(since, act))
  expect(places).not.toContain(-1)
  expect([...places].sort((a, b) => a - b)).toEqual(places)
  const quiet = since[firstOf(since, 'start-again')]!.at
  expect(quiet).toBeGreaterThan(untied + 1500)
  expect(declined).toBeNull()
  expect(timeline.end.insulator).toBe('replaced')
})

test('a label that says too little is set aside as a fault is', () => {
  const coldmere = place('coldmere-col')
  const line = coldmere.items.find((it) => it.type === 'handline')!
  const items = coldmere.items.map((it) =>
    it === line ? { ...it, label: { ...it.label, workingLoad: 20 }, defects: ['low-load'] } : it,
  )
  const { orders } = demonstrate({ ...coldmere, items }, pack)
  expect(orders.find((it) => it.do === 'judge' && it.on === line.id)?.values.verdict).toBe('quarantine')
})
