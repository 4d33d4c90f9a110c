/**
 * The one way a value is written: keys sorted, -0 as 0, nothing that is not finite, and so the same bytes for the same
 * value. `format` and `version` stand first in a file. Digests are taken over the compact form.
 */
type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json }

/** Without a space. @throws for NaN, Infinity, undefined, functions: our own mistake, never a file's */
export function canonicalText(value: unknown): string {
  return JSON.stringify(plain(value))
}

/** For a file that people also read: a line per key, and per element of a list at the top. */
export function fileText(value: Readonly<Record<string, unknown>>): string {
  const lines = Object.entries(plain(value) as Readonly<Record<string, Json>>).map(
    ([key, held]) => `  ${JSON.stringify(key)}: ${block(held)}`,
  )
  return `{\n${lines.join(',\n')}\n}\n`
}

function block(value: Json): string {
  if (!Array.isArray(value) || value.length === 0) return JSON.stringify(value)
  return `[\n${value.map((each) => `    ${JSON.stringify(each)}`).join(',\n')}\n  ]`
}

function plain(value: unknown): Json {
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new RangeError(`a finite number was to be written, got ${value}`)
    return value === 0 ? 0 : value
  }
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return value
  if (Array.isArray(value)) return value.map(plain)
  if (typeof value !== 'object') throw new TypeError(`a JSON value was to be written, got ${typeof value}`)
  const entries = Object.entries(value).filter(([, held]) => held !== undefined)
  return Object.fromEntries(entries.sort(([a], [b]) => rank(a, b)).map(([key, held]) => [key, plain(held)]))
}

const first = ['format', 'version']

function rank(a: string, b: string): number {
  const [i, k] = [first.indexOf(a), first.indexOf(b)]
  if (i >= 0 || k >= 0) return (i < 0 ? first.length : i) - (k < 0 ? first.length : k)
  return a < b ? -1 : 1
}
