/** A rule of a pack and what it found. Rules are data: kind, parameters, severity, reason, source. */
export type Severity = 'critical' | 'major' | 'minor'

export interface PackRule {
  /** Stable kebab id, never reused. */
  readonly id: string
  /** One of rules/kinds. */
  readonly kind: string
  readonly parameters: Readonly<Record<string, unknown>>
  readonly severity: Severity
  /** Element of competency it belongs to. */
  readonly element: string
  /** Keys in the pack's words. */
  readonly asks: string
  readonly reason: string
  /** `common practice, no source`, or the document. */
  readonly source: string
  /** ISO date from which it is asked; left out: as long as the pack. */
  readonly effectiveFrom?: string
}

/** What an element must reach to be met. No critical finding, whatever stands here. */
export interface Floor {
  /** At most so many major findings that stand. */
  readonly majors?: number
  /** At least this share of its minor rules kept, of those that the run gave something to look at. */
  readonly minorsKept?: number
}

export interface Pack {
  readonly id: string
  readonly edition: string
  readonly effectiveFrom: string
  readonly permitAfter: 'isolation' | 'earthsAtIsolationPoints'
  readonly lvGuard: 'twoCentral' | 'reach'
  readonly onCritical: 'goOn' | 'stop'
  readonly planOnSite: boolean
  readonly elements: readonly string[]
  /** By element, what it must reach by itself; left out: as every other. */
  readonly floors?: Readonly<Record<string, Floor>>
  readonly rules: readonly PackRule[]
}

export interface Finding {
  readonly rule: string
  /** Job second. */
  readonly at: number
  readonly severity: Severity
  readonly element: string
  readonly who?: string
  /** Index of the entry it is about; -1 when something was not done at all. */
  readonly entry: number
  /** What happened, for the words: placeholders of the pack's sentence. */
  readonly facts: Readonly<Record<string, string | number>>
  /** Put right by the crew before anybody was exposed, and by when (job second). */
  readonly recovered: boolean
  readonly putRightAt?: number
  readonly error: ErrorKind
  /** What other rules found of the same deviation: told, never scored. */
  readonly leadsTo: readonly Consequence[]
}

/**
 * What sort of error, as far as the run shows: done right before and once otherwise; the half that undoes something
 * forgotten; never done right; left out although the written plan has it. Where nothing shows which, `unclear`.
 */
export type ErrorKind = 'slip-of-attention' | 'lapse' | 'mistake' | 'violation' | 'unclear'

export type Consequence = Pick<Finding, 'rule' | 'at' | 'who' | 'entry' | 'facts'>
