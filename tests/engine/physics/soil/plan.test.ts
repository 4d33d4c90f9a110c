// Electrodes as one walks over them: circles, lines and both together (plane geometry, worked by hand).

import { describe, expect, it } from 'vitest'
import {
  distanceToElectrode,
  isAtSurface,
  middleOf,
  outerPlaces,
  raysFrom,
  wayRound,
  type Electrode,
  type GroundPoint,
} from '../../../../src/engine/physics/soil'
import { rod } from './rods'

type Part = Extract<Electrode, { kind: 'joined' }>['parts'][number]

const pad = (x: number, y: number, depth?: number): Part => ({
  kind: 'disc',
  at: { x, y },
  radius: 0.25,
  ...(depth === undefined ? {} : { depth }),
})
const line = (...points: readonly (readonly [x: number, y: number, depth: number])[]): Part => ({
  kind: 'wire',
  radius: 0.5,
  points: points.map(([x, y, depth]) => ({ x, y, depth })),
})
const joined = (...parts: readonly Part[]): Electrode => ({ id: 'j', kind: 'joined', parts })
const only = (part: Part): Electrode => ({ id: 'w', ...part })

const apart = (a: GroundPoint, b: GroundPoint): number => Math.hypot(a.x - b.x, a.y - b.y)
const sumOf = (places: readonly GroundPoint[]): GroundPoint =>
  places.reduce((sum, it) => ({ x: sum.x + it.x, y: sum.y + it.y }), { x: 0, y: 0 })

describe('where an electrode is', () => {
  it('its middle: of an upright its axis, of a wire the mean of its points, of several the mean of theirs', () => {
    expect(middleOf(rod('r', 3, 2, 0.1, 0, -7))).toEqual({ x: 3, y: -7 })
    expect(middleOf(only(line([0, 1, 1], [6, 2, 1], [9, 6, 4])))).toEqual({ x: 5, y: 3 })
    expect(middleOf(joined(line([0, 1, 1], [6, 2, 1], [9, 6, 4]), pad(7, -5)))).toEqual({ x: 6, y: -1 })
  })

  it('its corners: each point less and more by the radius', () => {
    expect(outerPlaces(joined(pad(2, 3), line([0, 1, 1], [4, 2, 1])))).toEqual([
      { x: 1.75, y: 2.75 },
      { x: 2.25, y: 3.25 },
      { x: -0.5, y: 0.5 },
      { x: 0.5, y: 1.5 },
      { x: 3.5, y: 1.5 },
      { x: 4.5, y: 2.5 },
    ])
  })

  it('the way to it is the way to the nearest of its parts', () => {
    const two = joined(pad(0, 0), pad(10, 0))
    expect(distanceToElectrode(two, { x: 3, y: 4 })).toBe(4.75)
    expect(distanceToElectrode(two, { x: 7, y: 4 })).toBe(4.75)
    expect(distanceToElectrode(two, { x: 10, y: 0 })).toBe(-0.25)
  })

  it('at the surface: a foot can stand on it', () => {
    expect([isAtSurface(rod('r', 0, 2)), isAtSurface(rod('r', 0, 2, 0.1, 0.4))]).toEqual([true, false])
    expect([undefined, 0, 0.5].map((depth) => isAtSurface(only(pad(0, 0, depth))))).toEqual([true, true, false])
    expect(isAtSurface(only(line([0, 0, 2], [3, 0, 0.5])))).toBe(true)
    expect(isAtSurface(only(line([0, 0, 2], [3, 0, 0.51])))).toBe(false)
    expect(isAtSurface(joined(pad(0, 0, 1), pad(3, 0)))).toBe(true)
    expect(isAtSurface(joined(pad(0, 0, 1), pad(3, 0, 1)))).toBe(false)
  })
})

describe('the way round', () => {
  it('a rod: a circle, 2π·1.25 m in steps of half a metre at most, so 16 of them', () => {
    const places = wayRound(rod('r', 3, 2, 0.25, 0, -7), 1, 0.5)
    expect(places).toHaveLength(16)
    for (const place of places) expect(apart(place, { x: 3, y: -7 })).toBeCloseTo(1.25, 12)
    // evenly round it: equal chords, and the axis in the middle
    const chord = 2 * 1.25 * Math.sin(Math.PI / 16)
    places.forEach((place, k) => expect(apart(place, places[(k + 1) % 16]!)).toBeCloseTo(chord, 12))
    const sum = sumOf(places)
    expect([sum.x / 16, sum.y / 16]).toEqual([expect.closeTo(3, 12), expect.closeTo(-7, 12)])
  })

  it('a wire: two lines beside it and half a circle round each end, none further than a step from the next', () => {
    // from (1, 2), 5 m towards (4, 6), at 0.5 + 1 m from its axis
    const slanted = only(line([1, 2, 1], [4, 6, 1]))
    const places = wayRound(slanted, 1, 0.5)
    for (const place of places) expect(distanceToElectrode(slanted, place)).toBeCloseTo(1, 9)
    const inPlace = (along: number, across: number): GroundPoint => ({
      x: 1 + 0.6 * along - 0.8 * across,
      y: 2 + 0.8 * along + 0.6 * across,
    })
    const outline = Array.from({ length: 101 }, (_, k) => k / 100).flatMap((share) => {
      const turn = Math.PI * (share - 0.5)
      const [ahead, aside] = [1.5 * Math.cos(turn), 1.5 * Math.sin(turn)]
      return [inPlace(5 * share, 1.5), inPlace(5 * share, -1.5), inPlace(5 + ahead, aside), inPlace(-ahead, aside)]
    })
    for (const place of outline) {
      expect(Math.min(...places.map((other) => apart(place, other)))).toBeLessThanOrEqual(0.2501)
    }
    // 11 places on each side, and of the 19 round each end those that are not beside the wire
    expect(places.length).toBeGreaterThanOrEqual(22 + 2 * 9)
    expect(places.length).toBeLessThanOrEqual(22 + 2 * 11)
  })

  it('nothing of it is nearer to any place: two pads leave out what lies inside the other’s circle', () => {
    const two = joined(pad(0, 0), pad(1, 0))
    const places = wayRound(two, 1, 0.5)
    for (const place of places) expect(distanceToElectrode(two, place)).toBeGreaterThanOrEqual(1 - 1e-6)
    // of 16 round each, those ahead of the line halfway between: |angle| < acos(0.5/1.25) = 66.4°, 0, ±22.5 and ±45°
    expect(places).toHaveLength(2 * (16 - 5))
  })

  it('a wire that goes straight down for a while is a point there', () => {
    const places = wayRound(only(line([0, 0, 1], [0, 0, 3], [4, 0, 3])), 1, 0.5)
    for (const { x, y } of places) expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true)
    // a side of the wire of 4 m: 9 places on either side of it
    expect(places.filter(({ x, y }) => Math.abs(Math.abs(y) - 1.5) < 1e-9 && x >= 0 && x <= 4)).not.toHaveLength(0)
    expect(new Set(places.filter(({ y }) => Math.abs(y - 1.5) < 1e-9).map(({ x }) => x.toFixed(6))).size).toBe(9)
  })
})

describe('straight ways out', () => {
  it('from an upright 72 ways, five degrees from each other', () => {
    const rays = raysFrom(rod('r', 3, 2, 0.25, 0, -7))
    expect(rays).toHaveLength(72)
    for (const { from, along } of rays) {
      expect(from).toEqual({ x: 3, y: -7 })
      expect(Math.hypot(along.x, along.y)).toBeCloseTo(1, 12)
    }
    const degrees = rays.map(({ along }) => Math.round((Math.atan2(along.y, along.x) * 180) / Math.PI + 360) % 360)
    expect([...new Set(degrees)].sort((a, b) => a - b)).toEqual(Array.from({ length: 72 }, (_, k) => 5 * k))
  })

  it('from a wire every way at its points and across it to both sides each half metre', () => {
    const rays = raysFrom(only(line([1, 2, 1], [1, 2, 3], [4, 6, 3])))
    const [round, across] = [rays.slice(0, 3 * 72), rays.slice(3 * 72)]
    expect(round.filter(({ from }) => apart(from, { x: 1, y: 2 }) === 0)).toHaveLength(144)
    expect(round.filter(({ from }) => apart(from, { x: 4, y: 6 }) === 0)).toHaveLength(72)
    // 5 m in half metres: eleven places, two ways from each
    expect(across).toHaveLength(22)
    const ways = across.map(({ from, along }) => [apart(from, { x: 1, y: 2 }), along.x, along.y])
    const wanted = Array.from({ length: 11 }, (_, k) => [
      [0.5 * k, -0.8, 0.6],
      [0.5 * k, 0.8, -0.6],
    ]).flat()
    expect(ways).toEqual(wanted.map((way) => way.map((part) => expect.closeTo(part, 12))))
    for (const { from } of across) expect(4 * (from.x - 1)).toBeCloseTo(3 * (from.y - 2), 12)
  })
})
