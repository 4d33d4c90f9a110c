/**
 * How a body current is laid on paths: every limb that lets current in is shared over every limb that lets it out, in
 * proportion (site-to-circuit 3). In and out are told by the phase of the largest current; what goes in at once is the
 * phasor sum of the inflow, and never less than any one contact carries.
 */
import { add, magnitude, ZERO, type Complex } from '../../math/complex'
import { heartFactor, type ShockPath } from '../../physics/body'
import type { ExposurePath } from '../paths/exposurePath'
import { pathBetween } from '../paths'
import { shockPathOf } from '../paths/shockPathOf'
import type { Touch } from './touch'

export interface SharedCurrent {
  /** The path that carries most, and its path of IEC 60479-1. */
  readonly path: ExposurePath
  readonly shockPath: ShockPath
  /** The whole current through the body, A. */
  readonly bodyCurrent: number
  /** Each pair's current times its heart-current factor, summed, A. */
  readonly heartEquivalent: number
}

/** Undefined when nothing flows. */
export function shareCurrent(touches: readonly Touch[], currents: readonly Complex[]): SharedCurrent | undefined {
  const sizes = currents.map(magnitude)
  const reference = currents[sizes.indexOf(Math.max(...sizes))]
  if (reference === undefined || magnitude(reference) === 0) return undefined
  const isIn = currents.map((it) => it.re * reference.re + it.im * reference.im > 0)
  const total = (way: boolean): number => sizes.reduce((sum, size, i) => (isIn[i] === way ? sum + size : sum), 0)
  const inflow = currents.reduce((sum, it, i) => (isIn[i] ? add(sum, it) : sum), ZERO)
  const into = total(true)
  const outOf = total(false)
  if (into === 0 || outOf === 0) return undefined
  const bodyCurrent = Math.max(magnitude(inflow), ...sizes)
  const isBothHands = (way: boolean): boolean => {
    return ['left-hand', 'right-hand'].every((hand) => touches.some((it, i) => it.limb === hand && isIn[i] === way))
  }
  const areBothHands = isBothHands(true) || isBothHands(false)
  const carried = new Map<ExposurePath, { current: number; most: number; shockPath: ShockPath }>()
  let heartEquivalent = 0
  touches.forEach((from, i) => {
    touches.forEach((to, j) => {
      if (!isIn[i] || isIn[j]) return
      const current = (bodyCurrent * (sizes[i]! / into) * sizes[j]!) / outOf
      const shockPath = shockPathOf(from.limb, to.limb, areBothHands)
      heartEquivalent += heartFactor[shockPath] * current
      const path = pathBetween(from, to)
      const before = carried.get(path) ?? { current: 0, most: -1, shockPath }
      const leads = current > before.most
      carried.set(path, {
        current: before.current + current,
        most: leads ? current : before.most,
        shockPath: leads ? shockPath : before.shockPath,
      })
    })
  })
  const [path, main] = [...carried].reduce((best, it) => (it[1].current > best[1].current ? it : best))
  return { path, shockPath: main.shockPath, bodyCurrent, heartEquivalent }
}
