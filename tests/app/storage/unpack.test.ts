import { expect, test } from 'vitest'
import { packText } from '../../../.ci/packText.mjs'
import { unpack } from '../../../src/app/storage/unpack'

const text = JSON.stringify({ words: ['≤ 25 mm²', 'Ω·m', 'ä'.repeat(100_000)] })

test('what the build packed comes out as it was, letters beyond the plain ones too', () => {
  expect(unpack(packText(text))).toBe(text)
})

test('also with another text as its dictionary, however long that is', () => {
  const dictionary = JSON.stringify({ words: ['Ω·m', '≤ 25 mm²'], rest: 'ö'.repeat(70_000) })
  const packed = packText(text, dictionary)
  expect(unpack(packed, dictionary)).toBe(text)
  const short = JSON.stringify({ words: ['a seat is brushed'] })
  expect(packText(short, short).length).toBeLessThan(packText(short).length)
  expect(unpack(packText(short, short), short)).toBe(short)
})
