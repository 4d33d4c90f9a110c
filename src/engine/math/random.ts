/**
 * Seeded chance in named streams: each purpose draws from its own, so that one more draw for the gear does not shift
 * the event. Generator xoshiro128** (Blackman and Vigna, public domain), state filled by splitmix32 from an FNV-1a
 * hash of seed and name. 32-bit integer arithmetic only, so the same numbers everywhere.
 */
import { invariant } from '../units/invariant'

export interface Stream {
  /** In [0, 1), 53 bits. */
  next(): number
  /** Whole number in [0, n), without bias. */
  below(n: number): number
}

/** The seed 7 and the seed '7' are the same seed. */
export function stream(seed: number | string, name: string): Stream {
  const state = filledState(`${String(seed)}\u0000${name}`)
  const next32 = (): number => nextWord(state)
  return {
    next: () => {
      const high = next32() >>> 5
      const low = next32() >>> 6
      return (high * 67108864 + low) / 9007199254740992
    },
    below: (n) => {
      invariant(Number.isInteger(n) && n > 0 && n <= 4294967296, 'a whole number from 1 to 2^32', n)
      const limit = 4294967296 - (4294967296 % n)
      let word = next32()
      while (word >= limit) word = next32()
      return word % n
    },
  }
}

function filledState(text: string): Uint32Array {
  let mixed = hashed(text)
  const state = new Uint32Array(4)
  for (let i = 0; i < 4; i++) {
    mixed = (mixed + 0x9e3779b9) | 0
    let word = Math.imul(mixed ^ (mixed >>> 16), 0x21f0aaad)
    word = Math.imul(word ^ (word >>> 15), 0x735a2d97)
    state[i] = word ^ (word >>> 15)
  }
  if (state.every((word) => word === 0)) state[0] = 1
  return state
}

function hashed(text: string): number {
  let hash = 0x811c9dc5
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i)
    hash = Math.imul(hash ^ (unit & 0xff), 0x01000193)
    hash = Math.imul(hash ^ (unit >>> 8), 0x01000193)
  }
  return hash
}

/** One step of xoshiro128**, the state changed in place. */
export function nextWord(s: Uint32Array): number {
  const [a, b, c, d] = [s[0]!, s[1]!, s[2]!, s[3]!]
  const result = Math.imul(rotated(Math.imul(b, 5), 7), 9) >>> 0
  const c2 = c ^ a
  const d2 = d ^ b
  s[0] = a ^ d2
  s[1] = b ^ c2
  s[2] = c2 ^ (b << 9)
  s[3] = rotated(d2, 11)
  return result
}

function rotated(word: number, by: number): number {
  return (word << by) | (word >>> (32 - by))
}
