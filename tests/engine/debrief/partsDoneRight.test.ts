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

/** The clean run from a part on; what was under way when the part begins is over by then. */
function restOf(orders: readonly Order[], from: number): readonly Order[] {
  return orders.filter((it) => it.at >= from)
}

function drill(slug: string, part: Part, change: (rest: readonly Order[]) => readonly Order[] = (rest) => rest) {
  const { scenario, orders, pack } = recorded('clean', slug)
  const opening = openingAt(scenario, orders, part)
  if (opening === undefined) return undefined
  const { site, prepared } = opening
  const timeline = runTimeline(scenario, change(restOf(orders, site.time)), site, prepared)
  return { timeline, findings: findFindings(timeline, shippedPack(pack)) }
}

describe.each(scenarioSlugs())('%s', (slug) => {
  test.each(parts)('from %s on, done as the clean run does it: nothing is found', (part) => {
    const done = drill(slug, part)
    if (done === undefined) return
    const { timeline, findings } = done
    const refused = timeline.entries.filter((it) => it.outcome === 'refused')
    expect(refused.map(({ order, refusal }) => `${order.at} ${order.do} ${order.on ?? ''}: ${refusal?.code}`)).toEqual(
      [],
    )
    expect(timeline.entries.length).toBeGreaterThan(0)
    expect(findings.map(({ rule, at, facts }) => ({ rule, at, facts }))).toEqual([])
  })
})

test('what is left out of a part is found, at the acts of the part', () => {
  const done = drill('kestrel-flat', 'below-lv', (rest) => rest.filter((it) => it.do !== 'prove'))!
  const found = done.findings.filter(({ severity }) => severity === 'critical')
  expect(found.map(({ rule }) => rule)).toContain('hv-proved-before')
  for (const { entry } of found) expect(entry).toBeLessThan(done.timeline.entries.length)
})

test('an act of the part is named by its place in the part, not in the whole job', () => {
  const done = drill('kestrel-flat', 'earths-on', (rest) => rest.filter((it) => it.do !== 'fit-cover'))!
  const named = done.findings.filter(({ entry }) => entry >= 0)
  for (const { entry, at } of named) expect(done.timeline.entries[entry]?.start).toBeLessThanOrEqual(at)
})
