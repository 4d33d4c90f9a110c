// Figures as they are told: two significant figures, units that change where the trade changes them (common practice, no source).

import { expect, test } from 'vitest'
import { amperes, english, makeSpeaker, volts } from '../../src/text'

const plainly = (words: string): string => words.replace(/\u00a0/g, ' ')

test.each([
  [0, '0 V'],
  [0.03, '< 0.1 V'],
  [0.14, '0.14 V'],
  [5666, '5 700 V'],
  [12_470, '12 kV'],
])('%d V is told as %s', (value, told) => expect(plainly(volts(value))).toBe(told))

test.each([
  [0, '0 mA'],
  [0.000_009, '< 0.01 mA'],
  [0.034, '34 mA'],
  [1_600, '1 600 A'],
  [10_140, '10 kA'],
])('%d A is told as %s', (value, told) => expect(plainly(amperes(value))).toBe(told))

test('a figure that is told as less than another is not told as about it', () => {
  const told = (figure: string) => plainly(makeSpeaker(english).say('scene.about', { figure }))
  expect(told(amperes(0.034))).toBe('about 34 mA')
  expect(told(amperes(0.000_001))).toBe('< 0.01 mA')
})
