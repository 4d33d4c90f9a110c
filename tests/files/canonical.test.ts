import { describe, expect, it } from 'vitest'
import { canonicalText, fileText } from '../../src/files/canonical'
import { digestOf, digestOfText } from '../../src/files/digest'

describe('the canonical writer', () => {
  it('sorts keys, format and version first, and writes -0 as 0', () => {
    expect(canonicalText({ b: -0, a: [{ z: 1, y: 2 }], version: 1, format: 'f' })).toBe(
      '{"format":"f","version":1,"a":[{"y":2,"z":1}],"b":0}',
    )
  })

  it('does not write what JSON cannot hold', () => {
    expect(() => canonicalText({ a: NaN })).toThrow(RangeError)
    expect(() => canonicalText([Infinity])).toThrow(RangeError)
    expect(() => canonicalText([undefined])).toThrow(TypeError)
  })

  it('gives a line to each element of a list at the top', () => {
    expect(fileText({ b: [{ c: 1 }, { c: 2 }], a: 1 })).toBe(
      '{\n  "a": 1,\n  "b": [\n    {"c":1},\n    {"c":2}\n  ]\n}\n',
    )
  })
})

describe('digests', () => {
  // FIPS 180-4, examples of SHA-256: the empty text and "abc".
  it('are SHA-256', () => {
    expect(digestOfText('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad')
    expect(digestOfText('')).toBe('e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855')
  })

  it('do not depend on the order of keys', () => {
    expect(digestOf({ a: 1, b: [0] })).toBe(digestOf({ b: [-0], a: 1 }))
    expect(digestOf({ a: 1 })).not.toBe(digestOf({ a: 2 }))
  })
})
