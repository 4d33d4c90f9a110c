/** The feet on the way: a walk is judged by its worst place. */
import { distance, type GroundPoint } from '../site/place'
import { poleFoot } from '../site/nextPole'
import type { PersonId } from '../site/scenario'
import type { Site } from '../site/site'
import { isDriven } from './fetching'
import { touch, type PersonContact } from './touching'

/** Both feet, in a pace, where the way comes nearest to anything in the ground that can rise; nothing on a drive. */
export function pacesOnWay(site: Site, who: PersonId, from: GroundPoint, to: GroundPoint): readonly PersonContact[] {
  if (isDriven(from, to)) return []
  const { stay } = site.scenario
  const next = site.scenario.nextPole ? [poleFoot(site.scenario, 'next')] : []
  const electrodes = [{ x: 0, y: 0 }, ...next, ...(stay ? [stay.anchor] : []), ...site.rods.map((rod) => rod.at)]
  const places = electrodes.map((electrode) => ({ electrode, at: nearestOnWay([from, to], electrode) }))
  const away = ({ electrode, at }: (typeof places)[number]): number => distance(electrode, at)
  const [worst] = [...places].sort((a, b) => away(a) - away(b))
  const on = { kind: 'ground', at: worst?.at ?? from, stance: 'pace' } as const
  return [touch(who, 'left-foot', on), touch(who, 'right-foot', on)]
}

/** On the straight line between two points. */
function nearestOnWay([from, to]: readonly [GroundPoint, GroundPoint], point: GroundPoint): GroundPoint {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  const squared = dx * dx + dy * dy
  const along = squared > 0 ? ((point.x - from.x) * dx + (point.y - from.y) * dy) / squared : 0
  const share = Math.min(1, Math.max(0, along))
  return { x: from.x + share * dx, y: from.y + share * dy }
}
