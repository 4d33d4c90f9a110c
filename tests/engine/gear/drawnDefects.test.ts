/**
 * Whatever a place can draw is found there by the act that finds it, and by no other before: looked at, read on the label,
 * tested (the procedure's table of gear; common practice, no source beyond it). Every defect of the catalogue is drawn, or
 * lies on the truck, in some place.
 */
import { describe, expect, it } from 'vitest'
import { believe, drawScenario, gearCatalogue, runTimeline, type ScenarioBase } from '../../../src/engine'
import { scenarioBase, scenarioSlugs } from '../../support/record/shelf'

type Fault = ScenarioBase['draws']['defects'][number]

const places = scenarioSlugs().map(scenarioBase)
const typeOf = (base: ScenarioBase, id: string): string => base.items.find((it) => it.id === id)?.type ?? ''

/** The item as it is on the truck, with and without the fault, after these acts of whoever works on the ground. */
function knownAfter(base: ScenarioBase, fault: Fault | undefined, item: string, acts: readonly string[]): string {
  const who = base.crew.find(({ role }) => role === 'ground-worker')!.id
  const faults = fault === undefined ? [] : [fault]
  const only = { ...base, draws: { ...base.draws, defects: faults, fixed: [quiet(faults)] } }
  const orders = ['book-out', ...acts].map((act, i) => ({ at: 300 * i, who, do: act, on: item, values: {} }))
  const { end, entries } = runTimeline(drawScenario(only, 1, 'practise'), orders)
  expect(entries.filter(({ outcome }) => outcome !== 'done')).toEqual([])
  const known = believe(end).items.find(({ id }) => id === item)
  return JSON.stringify([known?.label, known?.evidence])
}

const quiet = (defects: readonly Fault[]): ScenarioBase['draws']['fixed'][number] => ({
  seed: 1,
  purpose: 'practise',
  defects,
  visible: null,
})

const acts = { label: 'read-label', look: 'look', test: 'test-item' } as const
const order = ['label', 'look', 'test'] as const

describe.each(places)('drawn in $id', (base) => {
  it.each(base.draws.defects)('$item, $defect', (fault) => {
    const type = gearCatalogue.get(typeOf(base, fault.item))!
    const { foundBy } = type.defects.find(({ id }) => id === fault.defect)!
    const isDone = (act: (typeof order)[number]): boolean => act !== 'test' || type.test !== undefined
    const others = order.filter((act) => act !== foundBy && isDone(act)).map((act) => acts[act])
    expect(knownAfter(base, fault, fault.item, others)).toBe(knownAfter(base, undefined, fault.item, others))
    const all = [...others, acts[foundBy]]
    expect(knownAfter(base, fault, fault.item, all)).not.toBe(knownAfter(base, undefined, fault.item, all))
  })
})

describe('every defect of the catalogue', () => {
  const drawn = new Set(
    places.flatMap((base) => [
      ...base.draws.defects.map(({ item, defect }) => `${typeOf(base, item)}/${defect}`),
      ...base.items.flatMap(({ type, defects }) => defects.map((defect) => `${type}/${defect}`)),
    ]),
  )

  it.each([...gearCatalogue.values()])('of $id lies or is drawn somewhere', ({ id, defects }) => {
    expect(defects.map((it) => `${id}/${it.id}`).filter((name) => !drawn.has(name))).toEqual([])
  })

  it('is on few things of a place: most of what is on a truck is sound', () => {
    for (const { items, draws } of places) expect(draws.most).toBeLessThan(items.length / 10)
  })
})
