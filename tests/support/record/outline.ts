/** A barrier's outline: the hull round circles about what can come alive on the ground. */
import type { GroundPoint } from '../../../src/engine'

const sides = 8

/** @param radius metres that every side keeps at least from every centre */
export function outlineAround(centres: readonly GroundPoint[], radius: number): readonly GroundPoint[] {
  const reach = (radius + 0.05) / Math.cos(Math.PI / sides)
  const corners = centres.flatMap(({ x, y }) =>
    Array.from({ length: sides }, (_, k) => {
      const angle = ((k + 0.5) * 2 * Math.PI) / sides
      return { x: round(x + reach * Math.cos(angle)), y: round(y + reach * Math.sin(angle)) }
    }),
  )
  return hull(corners)
}

const round = (metres: number): number => Math.round(metres * 10) / 10

/** Andrew's monotone chain, counter-clockwise. */
function hull(points: readonly GroundPoint[]): readonly GroundPoint[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y)
  const half = (list: readonly GroundPoint[]): readonly GroundPoint[] => {
    const chain: GroundPoint[] = []
    for (const point of list) {
      while (chain.length >= 2 && cross(chain.at(-2)!, chain.at(-1)!, point) <= 0) chain.pop()
      chain.push(point)
    }
    return chain.slice(0, -1)
  }
  return [...half(sorted), ...half([...sorted].reverse())]
}

const cross = (o: GroundPoint, a: GroundPoint, b: GroundPoint): number =>
  (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x)
