import { gzipSync } from 'node:zlib'
import { expect, test } from 'vitest'
import { unpack } from '../../../src/app/storage/unpack'

test('what the build packed comes out as it was, letters beyond the plain ones too', () => {
  const text = JSON.stringify({ words: ['≤ 25 mm²', 'Ω·m', 'ä'.repeat(100_000)] })
  expect(unpack(gzipSync(text).toString('base64'))).toBe(text)
})
