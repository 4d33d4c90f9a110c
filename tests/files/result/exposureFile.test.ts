/** Exposures and stories in a file: units in each key, and no number of seconds where nothing cleared it. */
import { describe, expect, it } from 'vitest'
import { declaredCorner, liven } from '../../../src/engine'
import { exposureFile, storyFile } from '../../../src/files/result/exposureFile'
import { bondOn, earthedSite, inScenario, leftHandOnB, momentOf } from '../../engine/hazard/sites'

const storyIn = (ohmMetres?: number) => {
  const soil = { layers: [{ resistivity: ohmMetres ?? 100 }] }
  const site = earthedSite(bondOn, ...(ohmMetres === undefined ? [] : [inScenario(() => ({ soil }))]))
  const answer = liven(momentOf(site, leftHandOnB), 'clash-b', declaredCorner)
  if (answer.kind !== 'story') throw new Error(answer.reason)
  return answer
}

describe('a story in a file', () => {
  it('cleared after seconds: the same seconds, its one shot, the person’s shots', () => {
    const story = storyIn()
    const file = storyFile(story)
    expect(file.durationS).toBe(story.duration)
    expect(file.shots).toEqual([{ fromS: 0, toS: story.end, currentA: story.liveCurrent }])
    const worker = exposureFile(story.exposures.find((it) => it.person === 'pw')!)
    expect(worker.durationS).toBeCloseTo(story.duration, 6)
    expect(worker.shots).toEqual({ count: 1, longestS: worker.durationS, totalS: worker.durationS })
  })

  it('9 A on a rod of 700 Ω, below the relay’s 40 A: uncleared, everywhere', () => {
    const story = storyIn(1300)
    expect(story.clearedBy).toBe('nothing')
    const file = storyFile(story)
    expect(file.durationS).toBe('uncleared')
    for (const it of file.exposures as readonly Record<string, unknown>[]) expect(it.durationS).toBe('uncleared')
  })
})
