/**
 * Belief holds nothing that was not perceived: every defect that the catalogue has, put on every item of the scenario
 * that can have it, changes nothing that a view can read, until the act that would find it.
 */
import { describe, expect, it } from 'vitest'
import {
  affordances,
  believe,
  gearCatalogue,
  runTimeline,
  startSite,
  type Order,
  type Scenario,
  type Site,
} from '../../../src/engine'
import { marrowBend } from '../../support/marrowBend'

type FoundBy = 'look' | 'label' | 'test'

const base = marrowBend()
/** The register of Marrow Bend, and one sound item of every type that it has none of. */
const others = [...gearCatalogue.keys()].filter((type) => !base.items.some((it) => it.type === type))
const scenario: Scenario = {
  ...base,
  visible: null,
  items: [...base.items, ...others.map((type) => ({ id: `Z-${type}`, type, label: {}, defects: [] }))],
}
const finding: Readonly<Record<FoundBy, string>> = { look: 'look', label: 'read-label', test: 'test-item' }

/** Labels that read otherwise: what a fault of the label would have printed on it. */
function faultyLabel(
  now: Readonly<Record<string, unknown>>,
  changes: Readonly<Record<string, unknown>>,
): Readonly<Record<string, string | number>> {
  const printed = Object.entries(changes).filter(([name, value]) => typeof value !== 'boolean' && value !== now[name])
  return printed.length > 0 ? (Object.fromEntries(printed) as Record<string, string | number>) : { due: '2001-01-01' }
}

function flipped(
  item: string,
  defect: { readonly id: string; readonly foundBy: FoundBy; readonly changes: Readonly<Record<string, unknown>> },
): Scenario {
  return {
    ...scenario,
    items: scenario.items.map((it) => {
      if (it.id !== item) return it
      const isThere = it.defects.includes(defect.id)
      const defects = isThere ? it.defects.filter((id) => id !== defect.id) : [...it.defects, defect.id]
      return {
        ...it,
        defects,
        label: defect.foundBy === 'label' ? { ...it.label, ...faultyLabel(it.label, defect.changes) } : it.label,
      }
    }),
  }
}

function order(at: number, act: string, on: string): Order {
  return { at, who: 'gw', do: act, on, values: {} }
}

/** Registers it out, takes it in the hand, puts it down, then the acts in turn. */
function siteAfter(of: Scenario, item: string, acts: readonly string[]): Site {
  const handling = [order(0, 'book-out', item), order(600, 'take', item), order(1200, 'put-down', item)]
  const orders = [...handling, ...acts.map((act, i) => order(1800 + 600 * i, act, item))]
  const timeline = runTimeline(of, orders)
  const refused = timeline.entries.filter((entry) => entry.outcome !== 'done').map((entry) => entry.order.do)
  expect(refused).toEqual([])
  return timeline.end
}

/** All that a view can read: the belief, and what each thing affords to each person. */
const readable = (site: Site): string => JSON.stringify(believe(site))

/** What stands in the line comes into nobody's hand before it is down. */
const inHand = scenario.items.filter((item) => item.id !== scenario.work.old)

const cases = inHand.flatMap((item) =>
  gearCatalogue.get(item.type)!.defects.map((defect) => ({ item: item.id, defect })),
)

describe('belief', () => {
  it('is asked about every defect of every item', () => {
    expect(new Set(cases.map((it) => it.item)).size).toBe(scenario.items.length - 1)
    expect(cases.length).toBeGreaterThan(450)
    expect(new Set(inHand.map((it) => it.type)).size).toBe(gearCatalogue.size)
  })

  it('hides every defect of every item until the act that finds it', () => {
    for (const { item, defect } of cases) {
      const name = `${item} ${defect.id}`
      const other = flipped(item, defect)
      expect(readable(startSite(other)), name).toBe(readable(startSite(scenario)))
      const type = gearCatalogue.get(scenario.items.find((it) => it.id === item)!.type)!
      const others = (Object.keys(finding) as FoundBy[]).filter(
        (by) => by !== defect.foundBy && (by !== 'test' || type.test),
      )
      const blind = others.map((by) => finding[by])
      expect(readable(siteAfter(other, item, blind)), name).toBe(readable(siteAfter(scenario, item, blind)))
      const seeing = [...blind, finding[defect.foundBy]]
      expect(readable(siteAfter(other, item, seeing)), name).not.toBe(readable(siteAfter(scenario, item, seeing)))
    }
  }, 120_000)

  it('hides what is wrong with the old insulator until somebody beside it looks', () => {
    const { old } = scenario.work
    const type = gearCatalogue.get(scenario.items.find((it) => it.id === old)!.type)!
    for (const defect of type.defects) {
      const other = flipped(old, defect)
      expect(readable(startSite(other)), defect.id).toBe(readable(startSite(scenario)))
      const up = (of: Scenario): Site => {
        const site = startSite(of)
        const pw = { ...site.persons['pw']!, place: { kind: 'pole', station: 'above-lv' } as const }
        return runTimeline(of, [{ at: 0, who: 'pw', do: 'look', on: old, values: {} }], {
          ...site,
          persons: { ...site.persons, pw },
        }).end
      }
      expect(readable(up(other)), defect.id).not.toBe(readable(up(scenario)))
    }
  })

  it('offers the same acts whatever is wrong with an item', () => {
    const offered = (of: Scenario, item: string): string => {
      const site = siteAfter(of, item, [])
      return JSON.stringify(Object.keys(site.persons).map((person) => affordances(site, person, item)))
    }
    for (const { item, defect } of cases)
      expect(offered(flipped(item, defect), item), `${item} ${defect.id}`).toBe(offered(scenario, item))
  }, 120_000)

  it('hides which blade hangs, which hazards are real, what will come alive and with which seed', () => {
    const before = readable(startSite(scenario))
    const [first, ...rest] = scenario.switches
    const others: readonly Scenario[] = [
      { ...scenario, switches: [...rest, first!].map((it) => ({ ...it, hungBlades: ['B' as const] })).reverse() },
      { ...scenario, hazards: scenario.hazards.map((it) => ({ ...it, real: !it.real })) },
      { ...scenario, visible: { trigger: 'last-clamp-on', livening: 'clash-a', fallback: 1 } },
      { ...scenario, seed: 99 },
      { ...scenario, livenings: [] },
      { ...scenario, control: { takesCrossingOut: true, blocksReclose: false } },
    ]
    for (const other of others) expect(readable(startSite(other))).toBe(before)
  })

  it('knows that something came alive, not what', () => {
    const struck: Site = { ...startSite(scenario), livening: { id: 'clash-b', at: 5, cleared: true, provedOff: false } }
    expect(believe(struck).livening).toEqual({ at: 5, provedOff: false })
    expect(readable(struck)).not.toContain('clash')
  })

  it('does not hold what an item carried or whether it failed', () => {
    const start = startSite(scenario)
    const items = Object.fromEntries(
      Object.entries(start.items).map(([id, it]) => [id, { ...it, faulted: true, failed: true }]),
    )
    expect(readable({ ...start, items })).toBe(readable(start))
  })
})
