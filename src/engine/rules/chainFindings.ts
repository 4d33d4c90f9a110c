/**
 * One deviation is one finding, however many rules see it. What the others found hangs below it and is never scored.
 * A pack says which rule follows from which: `consequenceOf` for the same thing or person and no earlier, `causedBy`
 * whoever's it is and whenever it was made. Beside that, a rule that asks for an order only follows from a rule of at
 * least its weight that finds fault with the same acts, unless it is critical itself.
 */
import type { Finding, Severity } from './finding'

export interface Found {
  readonly finding: Finding
  /** Place of its rule in the pack. */
  readonly place: number
  readonly subject: string
  /** Acts that it is about. */
  readonly touches: readonly number[]
  readonly isSequence: boolean
  /** Rules whose earlier finding about the same thing or person says it already. */
  readonly causes: readonly string[]
  /** Rules whose finding says it already, whoever's it is and whenever it was made. */
  readonly roots: readonly string[]
}

/** How heavy a finding is beside another. */
export const severityRank: Readonly<Record<Severity, number>> = { critical: 3, major: 2, minor: 1 }

export function chainFindings(found: readonly Found[]): readonly Finding[] {
  const causes = found.map((each) => found.findIndex((other) => other !== each && leadsTo(other, each)))
  const roots = found.map((_, i) => rootOf(i, causes, found))
  return found.flatMap(({ finding }, i) => {
    if (roots[i] !== i) return []
    const below = found.filter((_, j) => j !== i && roots[j] === i).map((it) => it.finding)
    return [{ ...finding, leadsTo: below.sort((a, b) => a.at - b.at).map(asConsequence) }]
  })
}

/** Up to where nothing caused it; of causes that go round, the first to happen. */
function rootOf(from: number, causes: readonly number[], found: readonly Found[]): number {
  const way: number[] = []
  let at = from
  while (!way.includes(at)) {
    way.push(at)
    const cause = causes[at] ?? -1
    if (cause < 0) return at
    at = cause
  }
  const round = way.slice(way.indexOf(at))
  return round.reduce((first, i) => (isEarlier(found[i]!, found[first]!) ? i : first))
}

function leadsTo(other: Found, each: Found): boolean {
  if (other.finding.recovered) return false
  if (each.roots.includes(other.finding.rule)) return true
  if (each.causes.includes(other.finding.rule)) return isSame(other, each)
  return each.isSequence && each.finding.severity !== 'critical' && isOfSameActs(other, each)
}

/** The same thing or person, no later; where two rules name each other, the first of the pack says it. */
function isSame(other: Found, each: Found): boolean {
  const isFirst = !other.causes.includes(each.finding.rule) || other.place < each.place
  const isBefore = other.finding.at < each.finding.at || (other.finding.at === each.finding.at && isFirst)
  const isSameThing = other.subject === each.subject || other.subject === each.finding.facts['item']
  return isBefore && (isSameThing || (other.subject === '' && isSamePerson(other.finding, each.finding)))
}

function isSamePerson(a: Finding, b: Finding): boolean {
  return a.who === undefined || b.who === undefined || a.who === b.who
}

/** Of two rules that ask for orders the first to find fault says it; of the same rule each is a deviation by itself. */
function isOfSameActs(other: Found, each: Found): boolean {
  if (other.place === each.place || !other.touches.some((act) => each.touches.includes(act))) return false
  const more = severityRank[other.finding.severity] - severityRank[each.finding.severity]
  return more > 0 || (more === 0 && isEarlier(other, each))
}

function isEarlier(a: Found, b: Found): boolean {
  return a.finding.at < b.finding.at || (a.finding.at === b.finding.at && a.place < b.place)
}

function asConsequence({ rule, at, who, entry, facts }: Finding): Finding['leadsTo'][number] {
  return { rule, at, ...(who === undefined ? {} : { who }), entry, facts }
}
