/**
 * Reads a case's inputs key by key and collects everything that a model cannot take: missing and unknown keys, wrong
 * types, numbers out of range. After a problem a stand-in is returned, so that the rest is read too; `problems` must be
 * empty before anything is computed.
 */

interface Range {
  readonly above?: number
  readonly atLeast?: number
}

export class Inputs {
  readonly #values: Readonly<Record<string, unknown>>
  readonly #path: string
  readonly #problems: string[]
  readonly #read = new Set<string>()
  readonly #parts: Inputs[] = []

  constructor(value: unknown, path = '', problems: string[] = []) {
    this.#path = path
    this.#problems = problems
    const isObject = typeof value === 'object' && value !== null && !Array.isArray(value)
    this.#values = isObject ? (value as Record<string, unknown>) : {}
    if (!isObject) problems.push(`${path || 'inputs'}: expected an object, got ${shown(value)}`)
  }

  has(key: string): boolean {
    return Object.hasOwn(this.#values, key)
  }

  number(key: string, range: Range = {}, fallback?: number): number {
    const value = this.#take(key, fallback)
    const isInRange =
      typeof value === 'number' &&
      Number.isFinite(value) &&
      (range.above === undefined || value > range.above) &&
      (range.atLeast === undefined || value >= range.atLeast)
    if (isInRange) return value
    this.#refuse(key, `a finite number${spoken(range)}`, value)
    return Number.NaN
  }

  whole(key: string, range: Range = {}): number {
    const value = this.number(key, range)
    if (!Number.isNaN(value) && !Number.isInteger(value)) this.#refuse(key, 'a whole number', value)
    return value
  }

  text(key: string): string {
    const value = this.#take(key)
    if (typeof value === 'string' && value !== '') return value
    this.#refuse(key, 'a text', value)
    return ''
  }

  oneOf<const Choice extends string | number>(key: string, choices: readonly Choice[]): Choice {
    const value = this.#take(key)
    const choice = choices.find((known) => known === value)
    if (choice === undefined) this.#refuse(key, `one of ${choices.join(', ')}`, value)
    return choice ?? choices[0]!
  }

  /** Anything of JSON, as it stands: what it may be, somebody else says. */
  plain(key: string, fallback?: unknown): unknown {
    return this.#take(key, fallback)
  }

  object(key: string): Inputs {
    return this.#part(this.#take(key), this.#at(key))
  }

  list<Item>(key: string, readItem: (item: Inputs, index: number) => Item, fallback?: readonly unknown[]): Item[] {
    const value = this.#take(key, fallback)
    if (Array.isArray(value)) {
      return value.map((item, index) => readItem(this.#part(item, `${this.#at(key)}.${index}`), index))
    }
    this.#refuse(key, 'a list', value)
    return []
  }

  /** A problem that no single key shows. */
  refuse(reason: string): void {
    this.#problems.push(`${this.#path || 'inputs'}: ${reason}`)
  }

  /** Everything found so far, and every key that was there but never read. */
  problems(): readonly string[] {
    this.#refuseUnread()
    return this.#problems
  }

  #refuseUnread(): void {
    for (const key of Object.keys(this.#values)) {
      if (!this.#read.has(key)) this.#problems.push(`${this.#at(key)}: unknown here`)
    }
    for (const part of this.#parts) part.#refuseUnread()
  }

  #part(value: unknown, path: string): Inputs {
    const part = new Inputs(value, path, this.#problems)
    this.#parts.push(part)
    return part
  }

  #take(key: string, fallback?: unknown): unknown {
    this.#read.add(key)
    return this.has(key) ? this.#values[key] : fallback
  }

  #refuse(key: string, expected: string, got: unknown): void {
    this.#problems.push(`${this.#at(key)}: expected ${expected}, got ${shown(got)}`)
  }

  #at(key: string): string {
    return this.#path === '' ? key : `${this.#path}.${key}`
  }
}

function spoken({ above, atLeast }: Range): string {
  if (above !== undefined) return ` above ${above}`
  return atLeast === undefined ? '' : ` of at least ${atLeast}`
}

function shown(value: unknown): string {
  if (value === undefined) return 'nothing'
  if (typeof value === 'object') return value === null ? 'null' : Array.isArray(value) ? 'a list' : 'an object'
  return typeof value === 'string' ? JSON.stringify(value) : String(value)
}
