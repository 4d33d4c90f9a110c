// Lengths against the sheet of the scenario and geometry by hand.
import { expect, test } from 'vitest'
import { feelersLabels, feelersView } from '../../../src/app/scene/people/feelers'
import { dimensionLabels, dimensionsOf } from '../../../src/app/scene/site/dimensions'
import { sceneAt, timelineOf } from '../../support/sceneSites'

const timeline = timelineOf('clean')

test('the sizes that are written are those of the sheet and of what the crew set', () => {
  const { belief, layout, picture } = sceneAt(timeline, 'untie')
  const written = new Map(dimensionLabels(dimensionsOf(layout, picture)).map(({ key, text }) => [key, text]))
  // Wires at 8.5 m, their neighbours 0.75 m apart, low voltage at 7 m, the stay's anchor 5.5 m south: the file of the place.
  expect(written.get('dimension-wires-0')).toBe('0.75\u00a0m')
  expect(written.get('dimension-low-voltage')).toBe('1.5\u00a0m')
  expect(written.get('dimension-stay')).toBe('5.5\u00a0m')
  const corners = belief.barrier!
  const sides = [...written.keys()].filter((key) => key.startsWith('dimension-side-'))
  expect(sides).toHaveLength(corners.length)
  const { from, to } = belief.cover!
  expect(parseFloat(written.get('dimension-cover')!)).toBeCloseTo(to - from, 2)
})

test('before anything is fitted there are sizes of the place alone', () => {
  const { layout, picture } = sceneAt(timeline, 0)
  const keys = dimensionsOf(layout, picture).map(({ key }) => key)
  expect(keys).not.toContain('cover')
  expect(keys.some((key) => key.startsWith('side-'))).toBe(false)
  expect(keys).toContain('pole')
})

test('a pair of feet stands a metre apart, toward what lifts the ground; a hand is held out within reach', () => {
  const strongest = { x: 0, z: 0, amperes: 50, radii: [], ohm: [] }
  const set = { at: { x: 4, y: 0 }, hands: [], reads: null } as const
  const widthOf = (kind: 'pace' | 'touch'): readonly [number, number] => {
    const all = feelersView({ ...set, kind }, strongest).parts.map(({ geometry }) => {
      geometry.computeBoundingBox()
      return geometry.boundingBox!
    })
    const along = Math.max(...all.map(({ max }) => max.z)) - Math.min(...all.map(({ min }) => min.z))
    const across = Math.max(...all.map(({ max }) => max.x)) - Math.min(...all.map(({ min }) => min.x))
    return [along, across]
  }
  // Ankles 1 m apart along the line to the electrode; a boot adds less than 0.3 m.
  const [pace] = widthOf('pace')
  expect(pace).toBeGreaterThan(1)
  expect(pace).toBeLessThan(1.3)
  // Feet 0.3 m apart across it; the hand no farther than an arm of 0.67 m with its shoulder.
  const [touch, feet] = widthOf('touch')
  expect(feet).toBeLessThan(0.6)
  expect(touch).toBeLessThan(0.9)
  expect(feelersView({ ...set, kind: 'pace', at: null }, strongest).parts).toHaveLength(0)
})

test('what feelers read stands where they are; nothing is written while nothing was read', () => {
  const set = { kind: 'pace', at: { x: 3, y: -2 }, hands: [], reads: '47 V' } as const
  const [label] = feelersLabels(set, [])
  expect(label).toMatchObject({ text: '47 V', at: { x: -2, z: 3 } })
  expect(feelersLabels({ ...set, reads: null }, [])).toEqual([])
})
