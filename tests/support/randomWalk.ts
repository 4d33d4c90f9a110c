/** Random orders on a site, sensible and senseless, and what must be so of any run whatever. */
import {
  actions,
  extendTimeline,
  openTimeline,
  runTimeline,
  type OpenTimeline,
  type Order,
  type Site,
  type Value,
  type ValueSpec,
} from '../../src/engine'

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
      return [`clamp::${site.scenario.conductors[0]?.id ?? ''}`]
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
    who: pick(draw, Object.keys(site.persons))!,
    do: id,
    ...(action.withTypes && item && { with: item.id }),
    ...(thing !== undefined && { on: thing }),
    values: isBroken && draw.next(2) === 0 ? {} : Object.fromEntries(values),
  }
}

/** @param seed a number to type in again when it fails */
export function walkAtRandom(seed: number, opening: Site, steps: number): OpenTimeline {
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

/** A refusal leaves the site alone, no number is lost, and a replay from JSON is the same to the bit. */
export function faultsOfWalk(timeline: OpenTimeline, opening: Site): readonly string[] {
  const moved = timeline.entries.filter((it) => it.outcome !== 'done' && it.after !== it.before)
  const orders = JSON.parse(JSON.stringify(timeline.entries.map(({ order }) => order))) as readonly Order[]
  const again = runTimeline(opening.scenario, orders, opening)
  const isSame =
    JSON.stringify(again.end) === JSON.stringify(timeline.end) && again.moments.length === timeline.moments.length
  return [
    ...moved.map(({ order }) => `refused ${order.do} changed the site`),
    ...(lostNumbers({ ...timeline.end, scenario: null }) ? ['a number is lost'] : []),
    ...(isSame ? [] : ['the replay differs']),
  ]
}
