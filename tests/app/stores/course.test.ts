// A livening as it is played: which stretch a second lies in, how slow it goes, and that nothing flashes.
import { expect, test } from 'vitest'
import {
  comesAgain,
  type Course,
  isLiveAt,
  leastBetweenFlips,
  markBefore,
  nextMark,
  over,
  playOn,
  slownessOf,
  stepOf,
  stretchAt,
} from '../../../src/app/stores/course'

/** Two shots of 0.4 s with a dead time of 0.3 s between them. */
const twoShots: Course = {
  stretches: [
    { from: 0, to: 0.4, isLive: true },
    { from: 0.4, to: 0.7, isLive: false },
    { from: 0.7, to: 1.1, isLive: true },
  ],
  end: 1.1,
  isCleared: true,
  happenings: [
    { at: 0.34, what: 'relay-operates', of: 'fx', by: 'earth-fault' },
    { at: 0.4, what: 'breaker-opens', of: 'fx' },
    { at: 0.7, what: 'breaker-recloses', of: 'fx' },
    { at: 1.1, what: 'breaker-opens', of: 'fx' },
  ],
}
const lasting: Course = { ...twoShots, isCleared: false }

test('a second belongs to the stretch that it begins, and to none once all is over', () => {
  expect([0, 0.39, 0.4, 0.69, 0.7, 1.09].map((at) => stretchAt(twoShots, at))).toEqual([0, 0, 1, 1, 2, 2])
  expect(stretchAt(twoShots, 1.1)).toBe(over)
  expect(stretchAt(lasting, 1.1)).toBe(2)
})

test('dead between shots it may come again; after the last it does not', () => {
  expect(comesAgain(twoShots, 1)).toBe(true)
  expect(comesAgain(twoShots, 2)).toBe(false)
  expect(comesAgain(twoShots, over)).toBe(false)
})

test('as slow as fits into half a minute, never faster than it was', () => {
  expect(slownessOf({ end: 2.35 })).toBe(10)
  expect(slownessOf({ end: 0.58 })).toBe(50)
  expect(slownessOf({ end: 60 })).toBe(1)
  for (const end of [0.05, 0.3, 1, 7, 29]) expect(end * slownessOf({ end })).toBeLessThanOrEqual(30)
})

test('a key moves by a step of the 1-2-5 ladder, some hundred of them from end to end', () => {
  expect(stepOf({ end: 2.35 })).toBe(0.01)
  expect(stepOf({ end: 60 })).toBe(0.5)
})

test('played to the end, light and dark are at least a second apart, whatever the dead time', () => {
  // Twenty times slower than it was, this dead time would still last 6 s: a shorter one has to wait.
  const course: Course = {
    ...twoShots,
    stretches: [
      { from: 0, to: 0.01, isLive: true },
      { from: 0.01, to: 0.015, isLive: false },
      { from: 0.015, to: 1.1, isLive: true },
    ],
  }
  const flips: number[] = []
  let played = { second: 0, flippedAt: -Infinity }
  let wasLive = true
  for (let now = 0; now < 60_000 && played.second < course.end; now += 100) {
    played = playOn(course, played, 100, now)
    const isLive = isLiveAt(course, stretchAt(course, played.second))
    if (isLive !== wasLive) flips.push(now)
    wasLive = isLive
  }
  expect(played.second).toBe(course.end)
  expect(flips).toHaveLength(3)
  for (let i = 1; i < flips.length; i++) expect(flips[i]! - flips[i - 1]!).toBeGreaterThanOrEqual(leastBetweenFlips)
})

test('changes are stepped through in both directions, the start and the end among them', () => {
  const forward: number[] = [0]
  while (forward.at(-1)! < twoShots.end) forward.push(nextMark(twoShots, forward.at(-1)!))
  expect(forward).toEqual([0, 0.34, 0.4, 0.7, 1.1])
  const back: number[] = [twoShots.end]
  while (back.at(-1)! > 0) back.push(markBefore(twoShots, back.at(-1)!))
  expect(back).toEqual([...forward].reverse())
})
