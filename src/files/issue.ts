/** One fault of a file: where, what was found, what is allowed there. A bad file gives all of its issues at once. */
export interface Issue {
  /** JSON path, `$.items[3].label.due`; `$` is the whole file. */
  readonly path: string
  readonly found: string
  readonly allowed: string
}

export type Issues = readonly Issue[]

/** What reading gives: the value, or why not. */
export type Read<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly issues: Issues }

export function refuse(...issues: Issue[]): { readonly ok: false; readonly issues: Issues } {
  return { ok: false, issues }
}

/** `$.crew[0].id`; a key that is no plain word stands in brackets and quotes. */
export function jsonPath(steps: readonly (string | number)[]): string {
  const written = steps.map((step) => {
    if (typeof step === 'number') return `[${step}]`
    return /^[A-Za-z_]\w*$/.test(step) ? `.${step}` : `[${JSON.stringify(step)}]`
  })
  return `$${written.join('')}`
}

/** A value as the file has it, cut to one line of a message. */
export function foundText(value: unknown): string {
  if (value === undefined) return 'nothing'
  if (typeof value === 'number') return String(value)
  if (Array.isArray(value) && value.length > 8) return `a list of ${value.length}`
  const text = JSON.stringify(value)
  return text.length > 60 ? `${text.slice(0, 57)}…` : text
}
