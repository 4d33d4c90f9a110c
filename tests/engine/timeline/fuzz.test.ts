/**
 * Random orders, sensible and senseless: nothing crashes, no number is lost, a refusal changes nothing, and replay, live
 * play and JSON are one. Checked against itself by design; the invariants are those of the engine's contract.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  actions,
  extendTimeline,
  openTimeline,
  runTimeline,
  type Order,
  type Site,
  type Value,
  type ValueSpec,
} from '../../../src/engine'
import { recorded } from '../../support/cleanStages'
import { marrowBend } from '../../support/marrowBend'

const crew = ['gw', 'pic', 'pw', 'so']
const ids = [...actions.keys()]

interface Draw {
  next(n: number): number
}

/** A small generator of its own, so that a failing seed is a number to type in. */
function drawFrom(seed: number): Draw {
  let state = (seed + 1) * 2654435761
  return {
    next(n) {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0
      return Math.floor((state / 4294967296) * n)
    },
  }
}

const pick = <T>(draw: Draw, list: readonly T[]): T | undefined => list[draw.next(list.length)]

function valueFor(draw: Draw, spec: ValueSpec, site: Site): Value {
  const metres = (): number => (draw.next(400) - 200) / 10
  const point = (): { x: number; y: number } => ({ x: metres(), y: metres() })
  switch (spec.kind) {
    case 'number':
      return spec.low + (draw.next(11) * (spec.high - spec.low)) / 10
    case 'choice': {
      const choices = spec.of(site)
      return spec.many ? choices.filter(() => draw.next(2) === 0) : (pick(draw, choices) ?? '')
    }
    case 'point':
      return point()
    case 'outline':
      return [point(), point(), point()]
    case 'text':
      return 'words'
    case 'cards':
      return ['clamp:E-07:conductor-a']
  }
}

/** An order of good form most of the time; its place in the job is left to chance. */
function randomOrder(draw: Draw, site: Site, at: number): Order {
  const id = pick(draw, ids)!
  const action = actions.get(id)!
  const isBroken = draw.next(12) === 0
  const items = Object.values(site.items).filter((it) => action.withTypes?.includes(it.type))
  const item = pick(draw, isBroken ? Object.values(site.items) : items)
  const thing = pick(draw, action.things?.(site) ?? [])
  const values = Object.entries(action.values ?? {}).map(([name, spec]) => [name, valueFor(draw, spec, site)] as const)
  return {
    at,
    who: pick(draw, crew)!,
    do: id,
    ...(action.withTypes && item && { with: item.id }),
    ...(thing !== undefined && { on: thing }),
    values: isBroken && draw.next(2) === 0 ? {} : Object.fromEntries(values),
  }
}

function walkAtRandom(seed: number, opening: Site, steps: number) {
  const draw = drawFrom(seed)
  let timeline = openTimeline(opening.scenario, opening)
  let at = opening.time
  for (let step = 0; step < steps; step++) {
    at += draw.next(3) === 0 ? draw.next(120) : 0
    timeline = extendTimeline(timeline, randomOrder(draw, timeline.resume.site, at))
  }
  return timeline
}

/** JSON writes NaN and infinities as null: a site without null numbers has lost none. */
function lostNumbers(value: unknown): boolean {
  if (typeof value === 'number') return !Number.isFinite(value)
  if (typeof value !== 'object' || value === null) return false
  return Object.values(value).some(lostNumbers)
}

const openings: readonly Site[] = ['book-out', 'take-permit', 'drive-rod', 'clamp', 'untie', 'unclamp'].map(
  (act) => recorded('clean').entries.find((it) => it.order.do === act)!.before,
)

describe('random crews', () => {
  test('200 seeds: nothing crashes, refusals leave the site alone, replay is the same to the bit', () => {
    let acted = 0
    for (let seed = 0; seed < 200; seed++) {
      const opening = openings[seed % openings.length]!
      const timeline = walkAtRandom(seed, opening, 40)
      for (const entry of timeline.entries) {
        if (entry.outcome === 'done') acted++
        else expect(entry.after, `seed ${seed}, ${entry.order.do}`).toBe(entry.before)
      }
      expect(lostNumbers({ ...timeline.end, scenario: null }), `seed ${seed}`).toBe(false)
      const orders = timeline.entries.map((it) => it.order)
      const again = runTimeline(opening.scenario, JSON.parse(JSON.stringify(orders)) as readonly Order[], opening)
      expect(JSON.stringify(again.end), `seed ${seed}`).toBe(JSON.stringify(timeline.end))
      expect(again.moments.length).toBe(timeline.moments.length)
    }
    // The walk is no test if nearly everything is refused.
    expect(acted).toBeGreaterThan(1500)
  }, 120_000)

  test('values of any kind whatever are answered, never thrown', () => {
    const site = openings[3]!
    const anything = fc.record({
      who: fc.constantFrom(...crew, '', '__proto__'),
      do: fc.constantFrom(...ids, 'toString', '__proto__'),
      with: fc.option(fc.constantFrom(...Object.keys(site.items), '__proto__'), { nil: undefined }),
      on: fc.option(fc.constantFrom('conductor-a', 'pole', 'rod/R-1', 'switch-27', 'E-07', 'constructor'), {
        nil: undefined,
      }),
      values: fc.dictionary(
        fc.constantFrom('turns', 'to', 'at', 'outline', 'depth', 'from', 'readBack', '__proto__'),
        fc.jsonValue(),
      ),
    })
    fc.assert(
      fc.property(anything, ({ with: item, on, ...rest }) => {
        const order = { at: site.time, ...rest, ...(item && { with: item }), ...(on && { on }) } as unknown as Order
        const timeline = extendTimeline(openTimeline(site.scenario, site), order)
        expect(timeline.entries).toHaveLength(1)
        expect(['done', 'refused']).toContain(timeline.entries[0]!.outcome)
      }),
      { seed: 7, numRuns: 2000 },
    )
  })

  test('chance strikes too: random crews on the seed with a livening', () => {
    const scenario = marrowBend(1)
    const opening = { ...openings[4]!, scenario }
    for (let seed = 0; seed < 10; seed++) {
      const timeline = walkAtRandom(seed, opening, 30)
      expect(timeline.entries).toHaveLength(30)
    }
  })
})
