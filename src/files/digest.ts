/** SHA-256 of a file's value in canonical form: the layout of the text does not matter. Same in node and browser. */
import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import { canonicalText } from './canonical'

/** 64 hexadecimal digits. */
export function digestOf(value: unknown): string {
  return digestOfText(canonicalText(value))
}

export function digestOfText(text: string): string {
  return bytesToHex(sha256(utf8ToBytes(text)))
}
