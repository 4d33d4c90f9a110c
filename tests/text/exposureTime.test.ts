/** How long, in words: every end of a livening has its words; what nothing cleared is said so, never as a number. */
import { describe, expect, it } from 'vitest'
import type { ClearedBy } from '../../src/engine/hazard/lineStory'
import { english, exposureTime } from '../../src/text'

const ends: Readonly<Record<Exclude<ClearedBy, 'not-live'>, true>> = {
  'earth-fault': true,
  overcurrent: true,
  'sensitive-earth-fault': true,
  fuse: true,
  stall: true,
  'source-stop': true,
  nothing: true,
}

describe('what ended a livening', () => {
  it.each(Object.keys(ends))('%s has a sentence and a phrase', (end) => {
    const words: Readonly<Record<string, string>> = english
    expect(words[`cleared.${end}`]).toMatch(/^\{time\}: \{what\}\. .*\.$/)
    expect(words[`ended.${end}`]?.includes('{duration}')).toBe(end !== 'nothing')
  })
})

describe('exposureTime', () => {
  const shots = (count: number) => ({ count, longest: 2.5, total: 2.5 * count })

  it('one shot is its seconds, three are the longest and their sum', () => {
    expect(exposureTime({ cleared: true, duration: 2.5, shots: shots(1) })).toBe('2.5\u00a0s')
    expect(exposureTime({ cleared: true, duration: 2.5, shots: shots(3) })).toBe(
      '2.5\u00a0s, the longest of 3 shots, 7.5\u00a0s in all',
    )
  })

  it('what nothing cleared has no number', () => {
    expect(exposureTime({ cleared: false, duration: 60, shots: shots(1) })).toBe('nothing cleared it')
  })
})
