/**
 * How far out a pace can be more than tolerable at all, and boxes that hold every such place. All current in one point on
 * the more resistive layer, V = ρI/2πr, falls by ρI/2π r(r + 1) over a metre: no real ground drops as much that far out.
 */
import { magnitude, type Complex } from '../../math/complex'
import { PI } from '../../math/portable'
import { outerPlaces, type Electrode, type Soil } from '../../physics/soil'
import type { DrivenElectrode } from './safeDistance'
import type { Box } from './tolerableContour'

/** Metre; no site is looked at further away. */
const FARTHEST = 1000

/** Beside the electrodes themselves currents of both signs may add to a slope: twice the plain sum is on the safe side. */
const MARGIN = 2

/** Metre from the nearest electrode. */
export function reachOfPace(soil: Soil, currents: readonly Complex[], tolerable: number): number {
  const resistivity = Math.max(...soil.layers.map((layer) => layer.resistivity))
  const total = currents.reduce((sum, current) => sum + magnitude(current), 0)
  const square = (MARGIN * resistivity * total) / (2 * PI * tolerable)
  return Math.min(FARTHEST, 1 + Math.sqrt(square))
}

/** Of the whole current: what carries less makes no zone of its own. */
const LEAST_SHARE = 1e-3

/** One box round each group of electrodes that carry and whose reaches meet. */
export function clearBoxes(electrodes: readonly DrivenElectrode[], reach: number): readonly Box[] {
  const total = electrodes.reduce((sum, { current }) => sum + magnitude(current), 0)
  const carrying = electrodes.filter(({ current }) => magnitude(current) > LEAST_SHARE * total)
  const boxes: Box[] = []
  for (const { shape } of carrying) {
    let grown = boxRound(shape, reach)
    // a box that has grown may meet one that it did not meet before
    for (let met = boxes.findIndex((it) => isMeeting(it, grown)); met >= 0; ) {
      grown = joined(grown, boxes[met]!)
      boxes.splice(met, 1)
      met = boxes.findIndex((it) => isMeeting(it, grown))
    }
    boxes.push(grown)
  }
  return boxes
}

function boxRound(electrode: Electrode, reach: number): Box {
  const places = outerPlaces(electrode)
  const xs = places.map(({ x }) => x)
  const ys = places.map(({ y }) => y)
  return {
    from: { x: Math.min(...xs) - reach, y: Math.min(...ys) - reach },
    to: { x: Math.max(...xs) + reach, y: Math.max(...ys) + reach },
  }
}

function isMeeting(a: Box, b: Box): boolean {
  return a.from.x <= b.to.x && b.from.x <= a.to.x && a.from.y <= b.to.y && b.from.y <= a.to.y
}

function joined(a: Box, b: Box): Box {
  return {
    from: { x: Math.min(a.from.x, b.from.x), y: Math.min(a.from.y, b.from.y) },
    to: { x: Math.max(a.to.x, b.to.x), y: Math.max(a.to.y, b.to.y) },
  }
}
