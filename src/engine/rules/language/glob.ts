/** Names in packs: `conductor-*` stands for every name with that beginning, `*` may stand anywhere. */

export function matchesName(pattern: string, name: string): boolean {
  if (pattern === '*') return true
  if (!pattern.includes('*')) return name === pattern
  const parts = pattern.split('*')
  const first = parts[0] ?? ''
  if (!name.startsWith(first)) return false
  let at = first.length
  for (const part of parts.slice(1, -1)) {
    const found = name.indexOf(part, at)
    if (found < 0) return false
    at = found + part.length
  }
  const last = parts[parts.length - 1] ?? ''
  return name.length - last.length >= at && name.endsWith(last)
}

export type Names = string | readonly string[]

export function listNames(names: Names): readonly string[] {
  return typeof names === 'string' ? [names] : names
}

export function matchesNames(names: Names, name: string | undefined): boolean {
  if (name === undefined) return false
  return typeof names === 'string' ? matchesName(names, name) : names.some((pattern) => matchesName(pattern, name))
}
