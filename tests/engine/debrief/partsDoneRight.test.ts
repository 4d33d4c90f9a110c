/**
 * A drill that begins at a part is graded as the part that it is: whoever goes on as the clean run does is found fault
 * with in nothing, whatever place, and what is left out of it is found. Common practice, no source: nobody is marked
 * down for what somebody else has done, and done right, before them.
 */
import { describe, expect, test } from 'vitest'
import { openingAt, parts, runTimeline, type Order, type Part } from '../../../src/engine'
import { findFindings } from '../../../src/engine/rules/findFindings'
import { scenarioSlugs } from '../../support/record/shelf'
import { recorded, shippedPack } from '../../support/rules/recorded'

/** The clean run from a part on; what was begun while the part was still being prepared begins with it. */
function restOf(orders: readonly Order[], done: number, from: number): readonly Order[] {
  return orders.slice(done).map((it) => ({ ...it, at: Math.max(it.at, from) }))
}

function drill(slug: string, part: Part, change: (rest: readonly Order[]) => readonly Order[] = (rest) => rest) {
  const { scenario, orders, pack } = recorded('clean', slug)
  const { site, prepared } = openingAt(scenario, orders, part)!
  const timeline = runTimeline(
    scenario,
    change(restOf(orders, prepared?.entries.length ?? 0, site.time)),
    site,
    prepared,
  )
  return { timeline, findings: findFindings(timeline, shippedPack(pack)) }
}

/** The bucket goes past the low voltage: nobody ever stands below it. */
const never: Readonly<Record<string, readonly Part[]>> = { 'rustmesa-junction': ['below-lv'] }

test.each(Object.entries(never))('%s never gets to some parts', (slug, missing) => {
  const { scenario, orders } = recorded('clean', slug)
  expect(parts.filter((part) => openingAt(scenario, orders, part) === undefined)).toEqual(missing)
})

describe.each(scenarioSlugs())('%s', (slug) => {
  test.each(parts.filter((part) => !never[slug]?.includes(part)))(
    'from %s on, done as the clean run does it: nothing is found',
    (part) => {
      const { timeline, findings } = drill(slug, part)
      const refused = timeline.entries.filter((it) => it.outcome === 'refused')
      expect(
        refused.map(({ order, refusal }) => `${order.at} ${order.do} ${order.on ?? ''}: ${refusal?.code}`),
      ).toEqual([])
      expect(timeline.entries.length).toBeGreaterThan(0)
      expect(findings.map(({ rule, at, facts }) => ({ rule, at, facts }))).toEqual([])
    },
  )
})

test('what is left out of a part is found, at the acts of the part', () => {
  const done = drill('kestrel-flat', 'below-lv', (rest) => rest.filter((it) => it.do !== 'prove'))
  const found = done.findings.filter(({ severity }) => severity === 'critical')
  expect(found.map(({ rule }) => rule)).toContain('hv-proved-before')
  for (const { entry } of found) expect(entry).toBeLessThan(done.timeline.entries.length)
})

test('an act of the part is named by its place in the part, not in the whole job', () => {
  const { timeline, findings } = drill('kestrel-flat', 'below-lv', (rest) => rest.filter((it) => it.do !== 'brush'))
  const [unbrushed] = findings.filter(({ rule }) => rule === 'brushed')
  const { order, start } = timeline.entries[unbrushed!.entry]!
  expect([order.do, order.on, start]).toEqual(['clamp', unbrushed!.facts['on'], unbrushed!.at])
})
