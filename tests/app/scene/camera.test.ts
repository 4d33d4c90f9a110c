// Checked with the projection of the graphics library itself, not with our own arithmetic.
import { PerspectiveCamera, Vector3 } from 'three'
import { expect, test } from 'vitest'
import { fitted } from '../../../src/app/scene/camera/fit'
import { type Seen, shownBy, viewFor, type ViewName } from '../../../src/app/scene/camera/presets'
import { isBehind } from '../../../src/app/scene/labels/solid'
import { crewView, stancesOf } from '../../../src/app/scene/people/crew'
import { siteAt } from '../../../src/engine'
import { sceneOf, timelineOf } from '../../support/sceneSites'
import { secondOf } from '../../support/secondOf'

const timeline = timelineOf('clean')

/** The place as it is, or with the crew and the truck on the other side of the pole. */
function seenAt(when: string, isEast = false): Seen {
  const { layout, picture } = sceneOf(siteAt(timeline, secondOf(timeline, when)))
  const truck = isEast ? { x: -picture.truck.x, y: picture.truck.y } : picture.truck
  const there = { ...picture, truck }
  return { layout, picture: there, joints: crewView(layout, there, stancesOf(layout, there)).joints, livening: null }
}

/** Pixels of a picture of 1 000 by 600, of which a slip covers the right and a bar the top. */
const [wide, high, right, top] = [1000, 600, 336, 60]

function pixels(name: ViewName, seen: Seen): readonly { readonly x: number; readonly y: number }[] {
  const free = { wide: (wide - right) / wide, high: (high - top) / high }
  const shown = shownBy(name, seen)
  const view = fitted(viewFor(name, seen), shown, wide / high, free)
  const camera = new PerspectiveCamera(view.fov, wide / high, 0.1, 700)
  camera.position.copy(view.eye)
  camera.lookAt(view.target)
  camera.setViewOffset(wide, high, right / 2, -top / 2, wide, high)
  camera.updateMatrixWorld()
  return shown.map((point) => {
    const { x, y } = point.clone().project(camera)
    return { x: ((x + 1) / 2) * wide, y: ((1 - y) / 2) * high }
  })
}

test('what a view has to show lies in the part of the picture that no panel covers', () => {
  for (const name of ['plan', 'over', 'tarp'] as const)
    for (const when of ['receive-step', 'untie']) {
      const all = pixels(name, seenAt(when))
      expect(all.length).toBeGreaterThan(3)
      for (const { x, y } of all) {
        expect(x, `${name} ${when}`).toBeGreaterThan(0)
        expect(x, `${name} ${when}`).toBeLessThan(wide - right)
        expect(y, `${name} ${when}`).toBeGreaterThan(top)
        expect(y, `${name} ${when}`).toBeLessThan(high)
      }
    }
})

test('a view is not moved nearer than it says', () => {
  const seen = seenAt('untie')
  const view = viewFor('over', seen)
  const { eye, target } = fitted(view, [view.target], 1, { wide: 1, high: 1 })
  expect(eye.distanceTo(target)).toBeCloseTo(view.eye.distanceTo(view.target), 6)
})

test('from below one does not look at the truck through the pole, on whichever side it stands', () => {
  for (const isEast of [false, true]) {
    const seen = seenAt('untie', isEast)
    const { eye } = viewFor('ground', seen)
    const truck = new Vector3(seen.picture.truck.y, 0, seen.picture.truck.x)
    // Angle at the eye between the pole and the truck.
    const flat = (it: Vector3): Vector3 => it.clone().sub(eye).setY(0)
    expect(flat(new Vector3()).angleTo(flat(truck)), isEast ? 'east' : 'west').toBeGreaterThan(0.02)
  }
})

test('a point is behind a pole where the pole stands in the line of sight: beside, before and above it is not', () => {
  const pole = [{ from: new Vector3(0, 0, 0), to: new Vector3(0, 9, 0), radius: 0.12 }]
  const eye = new Vector3(-10, 2, 0)
  expect(isBehind(pole, new Vector3(10, 2, 0), eye)).toBe(true)
  // Half way along a line that ends 0.3 m aside it passes at 0.15 m; one that ends 0.2 m aside passes at 0.1 m.
  expect(isBehind(pole, new Vector3(10, 2, 0.3), eye)).toBe(false)
  expect(isBehind(pole, new Vector3(10, 2, 0.2), eye)).toBe(true)
  expect(isBehind(pole, new Vector3(-1, 2, 0), eye)).toBe(false)
  // From 2 m up over the top at 9 m one sees what is higher than 16 m at twice the distance.
  expect(isBehind(pole, new Vector3(10, 15.5, 0), eye)).toBe(true)
  expect(isBehind(pole, new Vector3(10, 16.6, 0), eye)).toBe(false)
  // On the shaft itself.
  expect(isBehind(pole, new Vector3(0.1, 2, 0), eye)).toBe(false)
})
