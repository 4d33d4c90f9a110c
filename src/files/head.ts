/** The first two keys of every file: which format, which version. A newer version is refused by name. */
import { foundText, refuse, type Read } from './issue'

export interface Format {
  readonly format: string
  readonly version: number
}

export function checkHead(value: unknown, expected: Format): Read<Readonly<Record<string, unknown>>> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return refuse({ path: '$', found: foundText(value), allowed: `an object of the format ${expected.format}` })
  }
  const file = value as Readonly<Record<string, unknown>>
  if (file.format !== expected.format) {
    return refuse({ path: '$.format', found: foundText(file.format), allowed: `"${expected.format}"` })
  }
  if (typeof file.version === 'number' && file.version > expected.version) {
    return refuse({
      path: '$.version',
      found: `${expected.format} version ${file.version}`,
      allowed: `at most version ${expected.version}: this file was written by a newer program`,
    })
  }
  return { ok: true, value: file }
}
