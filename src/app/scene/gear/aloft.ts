/** What hangs on ropes: hauled up beside the climber, or tied on below; sticks in a row, small gear in its bag. */
import { at, cylinder, ring, strut, vector } from '../geometry/shapes'
import type { Vector3 } from 'three'
import { type Built, built, join, part, wire } from '../ink/part'
import type { SitePicture } from '../site/sitePicture'

/** @param height of the hook; @param inUse sticks that somebody holds */
export function aloftView(picture: SitePicture, height: number, inUse: readonly string[]): Built {
  const idle = picture.aloft.filter(
    (item) => !inUse.includes(item) && !picture.leads.some((lead) => lead.item === item),
  )
  const sticks = idle.filter((item) => picture.typeOf[item] === 'operating-stick')
  const small = idle.filter((item) => !sticks.includes(item) && picture.typeOf[item] !== 'handline')
  const hung = sticks.map((item, index): Built => {
    const top = vector(-0.4 - 0.1 * index, height, 0.02)
    const foot = vector(top.x - 0.03, height - 3, top.z)
    return built(
      [
        part(strut(foot, top, 0.019, 0.014, 10), 'fibreglass', item, 0.05),
        part(at(ring(0.03, 0.007, 10), [top.x, top.y + 0.03, top.z]), 'steel', item, 0.03),
      ],
      [],
      [{ id: item, segments: [[foot, top]], radius: 0.03 }],
    )
  })
  return join(...hung, ...(small.length > 0 ? [bag(small, vector(0.42, height, 0.02))] : []))
}

/** @param foot of the handline */
export function tiedView(picture: SitePicture, foot: Vector3): Built {
  const small = picture.tied.filter((item) => !picture.leads.some((lead) => lead.item === item))
  return small.length > 0 ? bag(small, foot.clone().setY(1.15)) : built([])
}

/** Each item is a piece that shows over the rim, so that it can be picked. */
function bag(items: readonly string[], hook: Vector3): Built {
  const [x, y, z] = [hook.x, hook.y - 0.75, hook.z]
  const pieces = items.map((item, index) => {
    const angle = (index / items.length) * Math.PI * 2
    const foot = vector(x + Math.cos(angle) * 0.055, y + 0.06, z + Math.sin(angle) * 0.055)
    const top = foot.clone().setY(y + 0.28 + 0.03 * (index % 3))
    return {
      part: part(strut(foot, top, 0.024, 0.021, 8), index % 2 ? 'rubberDark' : 'white', item, 0.04),
      hit: { id: item, segments: [[foot.clone().setY(y + 0.18), top]] as const, radius: 0.03 },
    }
  })
  const cloth = part(at(cylinder(0.11, 0.09, 0.34, 14), [x, y, z]), 'canvas', '', 0.1)
  const strap = wire([vector(x - 0.1, y + 0.16, z), hook, vector(x + 0.1, y + 0.16, z)], 0.008, 'strap', '', 1.2)
  return built(
    [cloth, ...pieces.map((it) => it.part)],
    [strap],
    pieces.map((it) => it.hit),
  )
}
