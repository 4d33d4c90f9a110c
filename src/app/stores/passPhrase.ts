/** A pass phrase is never kept: only what can be checked against it (PBKDF2, SHA-256). */
import { pbkdf2 } from '@noble/hashes/pbkdf2.js'
import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex } from '@noble/hashes/utils.js'

export interface Lock {
  readonly salt: string
  readonly check: string
}

const rounds = 60_000

const derive = (phrase: string, salt: string): string =>
  bytesToHex(pbkdf2(sha256, phrase.normalize('NFKC').trim(), salt, { c: rounds, dkLen: 32 }))

export function makeLock(phrase: string): Lock {
  const salt = bytesToHex(crypto.getRandomValues(new Uint8Array(16)))
  return { salt, check: derive(phrase, salt) }
}

export const opens = (lock: Lock, phrase: string): boolean => derive(phrase, lock.salt) === lock.check
