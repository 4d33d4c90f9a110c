/** Chances in words: what was only estimated is never nothing and never certain; a range of one figure is that figure. */
import { expect, it } from 'vitest'
import { heartWords, percent } from '../../src/text'

const unit = '\u00a0%'

it.each([
  [0, '< 0.1'],
  [0.0004, '< 0.1'],
  [0.001, '0.1'],
  [0.256, '26'],
  [0.994, '99.4'],
  [0.9994, '99.9'],
  [0.9995, '> 99.9'],
  [1, '> 99.9'],
])('a share of %d is %s %%', (share, words) => {
  expect(percent(share)).toBe(`${words}${unit}`)
})

it('no share reads as 0 or 100 %', () => {
  const read = Array.from({ length: 20_001 }, (_, i) => percent(i / 20_000))
  expect(read.filter((words) => /^(0|100)\u00a0/.test(words))).toEqual([])
})

it('a range of which both ends read the same is not said', () => {
  expect(heartWords({ likely: 0.99999, low: 0.9999, high: 1 })).toBe(`Chance of fibrillation: > 99.9${unit}.`)
  expect(heartWords({ likely: 0.4, low: 0.2, high: 0.6 })).toBe(
    `Chance of fibrillation: 40${unit}; 20${unit} to 60${unit} in nine draws of ten.`,
  )
})
