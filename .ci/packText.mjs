// How the build packs a text of the shelf: compressed, with the first file of its kind as the dictionary of the others,
// since files of one kind repeat each other. The other half is src/app/storage/unpack.ts.

import { existsSync, readdirSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { deflateRawSync } from 'node:zlib'

/** As much of a dictionary as the format can look back. */
const window = 32_768

/**
 * The same file in the first folder beside this one that has it.
 * @param {string} path
 * @returns {string | undefined} nothing for that file itself
 */
export function firstOfKind(path) {
  const above = dirname(dirname(path))
  const first = readdirSync(above, { withFileTypes: true })
    .filter((it) => it.isDirectory())
    .map((it) => join(above, it.name, basename(path)))
    .sort()
    .find((it) => existsSync(it))
  return first === undefined || first === path ? undefined : first
}

/**
 * @param {string} text
 * @param {string} [dictionary]
 * @returns {string} base64
 */
export function packText(text, dictionary) {
  const options = dictionary === undefined ? {} : { dictionary: Buffer.from(dictionary).subarray(-window) }
  return deflateRawSync(text, { level: 9, ...options }).toString('base64')
}

/**
 * A module whose default is the text.
 * @param {string} unpack file of the function that unpacks
 * @param {string} text
 * @param {{ readonly id: string, readonly text: string }} [dictionary] module and text
 */
export function packedModule(unpack, text, dictionary) {
  const packed = packText(text, dictionary?.text)
  const lines = [`import { unpack } from ${JSON.stringify(unpack)}`]
  if (dictionary) lines.push(`import dictionary from ${JSON.stringify(dictionary.id)}`)
  return [...lines, `export default unpack('${packed}'${dictionary ? ', dictionary' : ''})`].join('\n')
}
