/**
 * Projects a few dozen labels after each drawn frame: transforms only, sizes measured once, collisions by rank. A label
 * lies on no clamp, no hand, nobody and no other label: it moves aside and is joined by a leader, and is hidden only where
 * there is no free place near. Of several places one is taken that no pole, truck or person stands before.
 */
import { type PerspectiveCamera, Vector3 } from 'three'
import type { Label } from './label'
import { hazardMark, letterMark } from './letterMark'
import { isBehind, type Solid } from './solid'

const svgSpace = 'http://www.w3.org/2000/svg'

interface Shown {
  readonly label: Label
  readonly element: HTMLElement
  readonly leader: SVGLineElement
  width: number
  height: number
}

/** Pixels of the picture. */
export type Box = readonly [left: number, top: number, right: number, bottom: number]

/** A part of the picture that has to stay in sight: a ball in scene metres. */
export interface Clear {
  readonly at: Vector3
  readonly radius: number
}

/** Pixels that panels cover. */
export interface Inset {
  readonly top: number
  readonly bottom: number
  readonly right: number
}

export class LabelLayer {
  private shown: readonly Shown[] = []
  private clear: readonly Clear[] = []
  private solids: readonly Solid[] = []
  private readonly foot = document.createElement('div')
  private footSize = { width: 0, height: 0 }
  private readonly leaders = document.createElementNS(svgSpace, 'svg')
  /** Where something else lies over the picture. */
  covered: Box | null = null
  inset: Inset = { top: 0, bottom: 0, right: 0 }

  constructor(private readonly root: HTMLElement) {
    this.leaders.setAttribute('class', 'scene-leaders')
    this.foot.className = 'scene-label scene-note'
    this.foot.hidden = true
    root.append(this.leaders, this.foot)
  }

  set(labels: readonly Label[]): void {
    for (const { element, leader } of this.shown) {
      element.remove()
      leader.remove()
    }
    this.shown = [...labels].sort((a, b) => b.rank - a.rank).map((label) => this.make(label))
    for (const it of this.shown) {
      const { width, height } = it.element.getBoundingClientRect()
      it.width = width
      it.height = height
    }
  }

  /** @param solids what hides things that are behind it */
  keepClear(clear: readonly Clear[], solids: readonly Solid[]): void {
    this.clear = clear
    this.solids = solids
  }

  /** A line at the foot of the picture. */
  note(text: string | null): void {
    this.foot.textContent = text ?? ''
    this.foot.hidden = text === null
    this.footSize = this.foot.getBoundingClientRect()
  }

  dispose(): void {
    this.set([])
    this.foot.remove()
    this.leaders.remove()
  }

  private make(label: Label): Shown {
    const element = document.createElement('div')
    element.className = `scene-label scene-${label.kind}${label.isChosen ? ' is-chosen' : ''}`
    if (label.kind === 'letter') element.append(letterMark(label.text, label.state ?? 'live'))
    else if (label.kind === 'hazard') element.append(hazardMark(label.text))
    else element.textContent = label.text
    this.root.append(element)
    const leader = document.createElementNS(svgSpace, 'line')
    leader.setAttribute('class', `scene-leader-${label.kind}`)
    this.leaders.append(leader)
    return { label, element, leader, width: 0, height: 0 }
  }

  update(camera: PerspectiveCamera, width: number, height: number): void {
    const taken = this.clear.flatMap((it) => boxOf(it, camera, width, height) ?? [])
    if (this.covered) taken.push(this.covered)
    if (!this.foot.hidden) taken.push([0, height - this.footSize.height - 16, this.footSize.width + 12, height])
    for (const it of this.shown) {
      const place = this.findPlace(it, camera, width, height, taken)
      it.element.style.visibility = place ? 'visible' : 'hidden'
      it.leader.style.visibility = place?.isAside ? 'visible' : 'hidden'
      if (!place) continue
      const [x, y] = place.corner
      taken.push([x - 2, y - 1, x + it.width + 2, y + it.height + 1])
      it.element.style.transform = `translate(${x.toFixed(1)}px,${y.toFixed(1)}px)`
      if (place.isAside) drawLeader(it.leader, place.point, x, y, it)
    }
  }

  private findPlace(
    { label, width: w, height: h }: Shown,
    camera: PerspectiveCamera,
    width: number,
    height: number,
    taken: readonly Box[],
  ) {
    const [top, bottom, end] = [this.inset.top + 4, height - this.inset.bottom - 4, width - this.inset.right]
    const points = candidates(label).flatMap((at) => {
      if (!(label.at instanceof Vector3) && isBehind(this.solids, at, camera.position)) return []
      projected.copy(at).project(camera)
      const point = [((projected.x + 1) / 2) * width, ((1 - projected.y) / 2) * height] as const
      const isSeen = projected.z <= 1 && point[0] >= 10 && point[0] <= end - 10 && point[1] >= top && point[1] <= bottom
      return isSeen ? [point] : []
    })
    const placed = (point: readonly [number, number], [dx, dy]: readonly [number, number]) => {
      const x = Math.min(end - w - 6, Math.max(6, point[0] + dx - w / 2))
      const y = point[1] + dy - h / 2
      if (y < top || y + h > bottom) return undefined
      if (taken.some(([left, up, right, down]) => x < right && x + w > left && y < down && y + h > up)) return undefined
      return { point, corner: [x, y] as const, isAside: dx !== 0 || dy !== 0 }
    }
    // Where it belongs, anywhere along its thing, before it moves aside.
    for (const sides of [own(label.away), around])
      for (const point of points)
        for (const side of sides) {
          const found = placed(point, side)
          if (found) return found
        }
    return undefined
  }
}

const projected = new Vector3()

/** On the screen, with a little air; undefined behind the eye. */
function boxOf({ at, radius }: Clear, camera: PerspectiveCamera, width: number, height: number): Box[] | undefined {
  projected.copy(at).applyMatrix4(camera.matrixWorldInverse)
  const depth = -projected.z
  if (depth <= 0) return undefined
  // Far away there is nothing to hide.
  const pixels = (radius * camera.projectionMatrix.elements[5]! * height) / 2 / depth
  if (pixels < 3) return undefined
  projected.applyMatrix4(camera.projectionMatrix)
  const [x, y] = [((projected.x + 1) / 2) * width, ((1 - projected.y) / 2) * height]
  return [[x - pixels, y - pixels, x + pixels, y + pixels]]
}

/** The side that was asked for, then the others. */
const own = (away: Label['away']): readonly (readonly [number, number])[] => {
  if (!away) return [[0, 0]]
  const [dx, dy] = away
  return [
    [dx, dy],
    [dx, -dy],
    [-dx, dy],
    [-dx, -dy],
  ]
}

/** Round about, near before far. */
const around: readonly (readonly [number, number])[] = [36, 64].flatMap((far) =>
  [0, 1, 2, 3, 4, 5, 6, 7].map((eighth) => {
    const angle = (eighth * Math.PI) / 4
    return [Math.round(far * Math.cos(angle)), Math.round(-far * Math.sin(angle))] as const
  }),
)

const candidates = ({ at }: Label): readonly Vector3[] => (at instanceof Vector3 ? [at] : at)

/** To the nearest side of the chip. */
function drawLeader(
  line: SVGLineElement,
  [px, py]: readonly [number, number],
  x: number,
  y: number,
  { width, height }: Shown,
): void {
  line.setAttribute('x1', px.toFixed(1))
  line.setAttribute('y1', py.toFixed(1))
  line.setAttribute('x2', Math.min(Math.max(px, x), x + width).toFixed(1))
  line.setAttribute('y2', Math.min(Math.max(py, y), y + height).toFixed(1))
}
