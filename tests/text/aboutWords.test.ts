import { expect, test } from 'vitest'
import { aboutWords } from '../../src/text'

test('less than can be told is not about anything', () => {
  expect(aboutWords('< 0.01 mA')).toBe('< 0.01 mA')
  expect(aboutWords('12 mA')).toBe('about 12 mA')
})
