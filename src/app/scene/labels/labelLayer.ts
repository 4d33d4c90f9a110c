/**
 * Projects a few dozen labels after each drawn frame: transforms only, sizes measured once, collisions by rank. A label
 * that finds no free place is hidden.
 */
import { type PerspectiveCamera, Vector3 } from 'three'
import type { Label } from './label'
import { hazardMark, letterMark } from './letterMark'

const svgSpace = 'http://www.w3.org/2000/svg'

interface Shown {
  readonly label: Label
  readonly element: HTMLElement
  readonly leader: SVGLineElement | null
  width: number
  height: number
}

type Box = readonly [left: number, top: number, right: number, bottom: number]

/** Pixels that panels cover. */
export interface Inset {
  readonly top: number
  readonly bottom: number
  readonly right: number
}

export class LabelLayer {
  private shown: readonly Shown[] = []
  private readonly foot = document.createElement('div')
  private readonly leaders = document.createElementNS(svgSpace, 'svg')
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
      leader?.remove()
    }
    this.shown = [...labels].sort((a, b) => b.rank - a.rank).map((label) => this.make(label))
    for (const it of this.shown) {
      const { width, height } = it.element.getBoundingClientRect()
      it.width = width
      it.height = height
    }
  }

  /** A line at the foot of the picture. */
  note(text: string | null): void {
    this.foot.textContent = text ?? ''
    this.foot.hidden = text === null
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
    if (!label.away) return { label, element, leader: null, width: 0, height: 0 }
    const leader = document.createElementNS(svgSpace, 'line')
    leader.setAttribute('class', `scene-leader-${label.kind}`)
    this.leaders.append(leader)
    return { label, element, leader, width: 0, height: 0 }
  }

  update(camera: PerspectiveCamera, width: number, height: number): void {
    const taken: Box[] = []
    for (const it of this.shown) {
      const place = this.findPlace(it, camera, width, height, taken)
      it.element.style.visibility = place ? 'visible' : 'hidden'
      if (it.leader) it.leader.style.visibility = place ? 'visible' : 'hidden'
      if (!place) continue
      const [x, y] = place.corner
      taken.push([x - 2, y - 1, x + it.width + 2, y + it.height + 1])
      it.element.style.transform = `translate(${x.toFixed(1)}px,${y.toFixed(1)}px)`
      if (it.leader) drawLeader(it.leader, place.point, x, y, it)
    }
  }

  private findPlace(
    { label, width: w, height: h }: Shown,
    camera: PerspectiveCamera,
    width: number,
    height: number,
    taken: readonly Box[],
  ) {
    const projected = new Vector3()
    const [top, bottom, end] = [this.inset.top + 4, height - this.inset.bottom - 4, width - this.inset.right]
    for (const at of candidates(label)) {
      projected.copy(at).project(camera)
      const point = [((projected.x + 1) / 2) * width, ((1 - projected.y) / 2) * height] as const
      if (projected.z > 1 || point[0] < 10 || point[0] > end - 10 || point[1] < top || point[1] > bottom) continue
      for (const [dx, dy] of sides(label.away)) {
        const x = Math.min(end - w - 6, Math.max(6, point[0] + dx - w / 2))
        const y = point[1] + dy - h / 2
        if (y < top || y + h > bottom) continue
        if (taken.some(([left, up, right, down]) => x < right && x + w > left && y < down && y + h > up)) continue
        return { point, corner: [x, y] as const }
      }
    }
    return undefined
  }
}

/** The side that was asked for, then the others. */
const sides = (away: Label['away']): readonly (readonly [number, number])[] => {
  if (!away) return [[0, 0]]
  const [dx, dy] = away
  return [
    [dx, dy],
    [dx, -dy],
    [-dx, dy],
    [-dx, -dy],
  ]
}

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
