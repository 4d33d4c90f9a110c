/**
 * Where a thing is, as straight pieces, for the tape: x east, y north, z up, metres from the foot of the pole. A wire is
 * taken as far as it hangs about as high as at the pole, which is what the scenario says. Undefined where the crew knows no place for it.
 */
import type { Belief } from '../../engine'
import type { TapeEnd } from './tapeStore'

export interface Place {
  readonly x: number
  readonly y: number
  readonly z: number
}

export type Piece = readonly [Place, Place]

/** Metres of a wire either side of the pole: its sag there is under a third of a metre (common practice, no source). */
const level = 4
/** A standing person (common practice, no source). */
const tall = 1.75

const piece = (a: Place, b: Place): readonly Piece[] => [[a, b]]
const spot = (x: number, y: number, z = 0): readonly Piece[] => piece({ x, y, z }, { x, y, z })
const upright = (x: number, y: number, from: number, to: number): readonly Piece[] =>
  piece({ x, y, z: from }, { x, y, z: to })

export function shapeOf(belief: Belief, end: TapeEnd): readonly Piece[] | undefined {
  if (end.kind === 'ground') return spot(end.at.x, end.at.y)
  return onPole(belief, end.id) ?? onGround(belief, end.id) ?? whereIs(belief, end.id)
}

function onPole({ sheet, cover }: Belief, id: string): readonly Piece[] | undefined {
  const wire = [...sheet.conductors, ...sheet.lv.wires].find((it) => it.id === id)
  if (wire) return piece({ x: -level, y: wire.x, z: wire.height }, { x: level, y: wire.x, z: wire.height })
  const { pole, stay } = sheet
  const half = Math.max(...sheet.conductors.map(({ x }) => Math.abs(x)))
  if (id === 'arm') return piece({ x: 0, y: -half, z: pole.armHeight }, { x: 0, y: half, z: pole.armHeight })
  if (id === 'pole') return upright(0, 0, 0, pole.height)
  if (id === 'pole-foot') return spot(0, 0)
  if (id === 'pole-top') return spot(0, 0, pole.height)
  if (id === 'cover') return cover ? upright(0, 0, cover.from, cover.to) : undefined
  if (id === 'stay' && stay) return piece({ x: 0, y: 0, z: pole.armHeight }, { ...stay.anchor, z: 0 })
  return undefined
}

function onGround({ sheet, rods, barrier, truck }: Belief, id: string): readonly Piece[] | undefined {
  const rod = rods.find((it) => `rod/${it.item}` === id)
  if (rod) return spot(rod.at.x, rod.at.y)
  if (id === 'barrier')
    return barrier?.map(
      (corner, i): Piece => [
        { ...corner, z: 0 },
        { ...barrier[(i + 1) % barrier.length]!, z: 0 },
      ],
    )
  if (id === 'truck') return spot(truck.x, truck.y)
  const marked = sheet.hazards.find((it) => it.id === id)
  if (marked) return spot(marked.at.x, marked.at.y)
  const device = sheet.switches.find((it) => it.id === id || id.startsWith(`${it.id}/`))
  return device && spot(device.along, 0)
}

function whereIs({ persons, sheet }: Belief, id: string): readonly Piece[] | undefined {
  const person = persons.find((it) => it.id === id)
  if (!person) return undefined
  const { place } = person
  if (place.kind === 'ground') return upright(place.at.x, place.at.y, 0, tall)
  if (place.kind === 'pole') {
    const feet = sheet.pole.feetAt[place.station]
    return upright(0, 0, feet, feet + tall)
  }
  const device = sheet.switches.find((it) => place.kind === 'switch' && it.id === place.id)
  return device && upright(device.along, 0, 0, tall)
}
