/** What a label could be behind: poles, the truck, people, each as a straight piece with a radius, scene metres. */
import { Vector3 } from 'three'

export interface Solid {
  readonly from: Vector3
  readonly to: Vector3
  readonly radius: number
}

/** What lies on a solid, or so near beside it, is not behind it, metres. */
const beside = 0.25

const seen = new Vector3()
const ahead = new Vector3()
const axis = new Vector3()
const between = new Vector3()

export const isBehind = (solids: readonly Solid[], point: Vector3, eye: Vector3): boolean =>
  solids.some((solid) => {
    ahead.subVectors(point, eye)
    const { aside, short } = passing(solid, eye)
    return aside < solid.radius && short * ahead.length() > solid.radius + beside
  })

/**
 * How far aside the line of sight passes the axis, and the share of it that is left behind there. Nearest points of two
 * straight pieces by clamping both parameters in turn.
 */
function passing({ from, to }: Solid, eye: Vector3): { readonly aside: number; readonly short: number } {
  axis.subVectors(to, from)
  between.subVectors(eye, from)
  const [aa, ab, bb] = [ahead.dot(ahead), ahead.dot(axis), axis.dot(axis)]
  const [ac, bc] = [ahead.dot(between), axis.dot(between)]
  const flat = aa * bb - ab * ab
  let along = flat > 1e-9 ? clamp((ab * bc - ac * bb) / flat) : 0
  const up = bb > 0 ? clamp((ab * along + bc) / bb) : 0
  along = aa > 0 ? clamp((ab * up - ac) / aa) : 0
  seen.copy(from).addScaledVector(axis, up)
  return { aside: seen.distanceTo(between.copy(eye).addScaledVector(ahead, along)), short: 1 - along }
}

const clamp = (share: number): number => Math.min(1, Math.max(0, share))
