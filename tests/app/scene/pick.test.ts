import { PerspectiveCamera, Vector3 } from 'three'
import { expect, test } from 'vitest'
import type { Hit } from '../../../src/app/scene/ink/part'
import { anchorIn, findPixel, pick, slack } from '../../../src/app/scene/pick/pick'

const screen = { width: 800, height: 600 }

/** Ten metres in front of the origin, looking at it: 600 px show 2·10·tan 20° = 7.28 m, so 82.4 px a metre there. */
function eye(): PerspectiveCamera {
  const camera = new PerspectiveCamera(40, screen.width / screen.height, 0.05, 700)
  camera.position.set(0, 0, 10)
  camera.lookAt(0, 0, 0)
  camera.updateMatrixWorld()
  camera.updateProjectionMatrix()
  return camera
}

const wire = (id: string, y: number, z = 0): Hit => ({
  id,
  segments: [[new Vector3(-5, y, z), new Vector3(5, y, z)]],
  radius: 0.01,
})

test('a thin wire is hit with slack round it, wider for a finger', () => {
  const hits = [wire('a', 0)]
  const camera = eye()
  const at = (offset: number, room: number) => pick(hits, camera, screen, 400, 300 + offset, room)?.id
  expect(at(0, slack.mouse)).toBe('a')
  expect(at(8, slack.mouse)).toBe('a') // 8 px and the wire's own 0.8 px
  expect(at(10, slack.mouse)).toBeUndefined()
  expect(at(21, slack.touch)).toBe('a') // a target of at least 44 px
  expect(at(24, slack.touch)).toBeUndefined()
})

test('the nearest on the screen wins; of two under the pointer the nearer to the eye', () => {
  const camera = eye()
  expect(pick([wire('low', -0.1), wire('high', 0.1)], camera, screen, 400, 298, 22)?.id).toBe('high')
  expect(pick([wire('far', 0, -5), wire('near', 0, 2)], camera, screen, 400, 300, 8)?.id).toBe('near')
  expect(pick([wire('behind', 0, 12)], camera, screen, 400, 300, 22)).toBeNull()
})

test('a segment that runs past the eye is picked by what lies before it', () => {
  const through: Hit = { id: 'pole', segments: [[new Vector3(0.5, 0, 30), new Vector3(0.5, 0, -30)]], radius: 0.05 }
  expect(pick([through], eye(), screen, 400 + 0.5 * 82.4, 300, 8)?.id).toBe('pole')
})

test('the pixel that is given for a thing gives that thing, and its plate is joined on it', () => {
  const hits = [wire('a', 1), wire('b', 0.9), wire('hidden', 40)]
  const camera = eye()
  const found = findPixel(hits, 'b', camera, screen, slack.mouse)!
  expect(pick(hits, camera, screen, found.x, found.y, slack.mouse)?.id).toBe('b')
  expect(findPixel(hits, 'hidden', camera, screen, slack.mouse)).toBeUndefined()
  // One metre up at ten metres: 300 − 82.4 px.
  expect(anchorIn(hits, 'a', camera, screen)!.y).toBeCloseTo(300 - 82.4, 0)
  expect(anchorIn(hits, 'hidden', camera, screen)).toBeNull()
})
