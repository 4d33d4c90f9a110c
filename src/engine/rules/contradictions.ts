/**
 * Rules of one pack that no run can keep together, or that can never find anything: opposite orders, a least above a
 * most, an act that two rules give to different roles, an act asked for by one rule and forbidden by another, a
 * finding swallowed by one of less weight.
 */
import { listNames, matchesName, type Names } from './language/glob'
import { severityRank } from './chainFindings'
import type { Pack, PackRule } from './finding'
import type { PackIssue } from './language/parameterSpec'
import { findOpposites } from './opposites'
import type { Pattern } from './language/pattern'
import { readList, readPatterns, readText } from './language/read'

export function findContradictions(pack: Pack): readonly PackIssue[] {
  return [
    ...pack.rules.flatMap((rule, i) => findWithin(rule, `$.rules[${i}]`)),
    ...groupsOf(pack).flatMap((same) => findCycles(pack, same)),
    ...findOpposites(pack),
    ...findOpposedRoles(pack),
    ...findForbidden(pack),
    ...findSwallowed(pack),
    ...findRoundCauses(pack),
    ...findStrangeFloors(pack),
  ]
}

function findWithin(rule: PackRule, path: string): readonly PackIssue[] {
  const issues: PackIssue[] = []
  const { least, most } = rule.parameters
  const at = `${path}.parameters`
  if (typeof least === 'number' && typeof most === 'number' && least > most) {
    issues.push({ path: at, found: `least ${least}, most ${most}`, allowed: 'a least that is not above the most' })
  }
  if ((rule.kind === 'count' || rule.kind === 'geometry') && least === undefined && most === undefined) {
    issues.push({ path: at, found: 'neither least nor most', allowed: 'least, most or both: else it can find nothing' })
  }
  if (rule.kind === 'state-at' && rule.parameters['when'] === undefined && rule.parameters['atEnd'] === undefined) {
    issues.push({ path: at, found: 'neither when nor atEnd', allowed: 'when, atEnd or both: else it is never asked' })
  }
  if (rule.kind === 'stated' && rule.parameters['truth'] === undefined && rule.parameters['equals'] === undefined) {
    issues.push({ path: at, found: 'neither truth nor equals', allowed: 'truth or equals' })
  }
  const needsModel = ['same-as', 'against'].includes(String(rule.parameters['way']))
  if (rule.kind === 'across' && needsModel && rule.parameters['as'] === undefined) {
    issues.push({ path: at, found: 'no as', allowed: 'the acts whose way is followed or turned round' })
  }
  if (
    rule.kind === 'judgement' &&
    rule.parameters['fault'] === 'no-evidence' &&
    rule.parameters['evidence'] === undefined
  ) {
    issues.push({ path: at, found: 'no evidence', allowed: 'what must have been looked at' })
  }
  return issues
}

interface Edge {
  readonly from: string
  readonly to: string
  readonly rule: number
}

/** A pattern as one name, so that the same acts in two rules are the same node of the order. */
function nameOf(pattern: Pattern): string {
  const entries = Object.entries(pattern).sort(([a], [b]) => (a < b ? -1 : 1))
  return JSON.stringify(entries)
}

/** Orders of the whole run, and those inside each item, person or device: two of a different sort are not compared. */
const groupsOf = (pack: Pack): readonly (string | undefined)[] => [
  ...new Set([undefined, ...pack.rules.flatMap((rule) => readText(rule.parameters, 'same') ?? [])]),
]

/** First before second: in the whole run, or for the same of something. */
function edgesOf(rule: PackRule, index: number, same: string | undefined): readonly Edge[] {
  const pairs = (first: readonly Pattern[], second: readonly Pattern[]): readonly Edge[] =>
    first.flatMap((a) => second.map((b) => ({ from: nameOf(a), to: nameOf(b), rule: index })))
  if (rule.kind === 'order' && readText(rule.parameters, 'same') === same) {
    const steps = readPatterns(rule.parameters, 'steps')
    return steps.slice(1).flatMap((step, i) => pairs(steps.slice(i, i + 1), [step]))
  }
  const need = readPatterns(rule.parameters, 'need')
  if (rule.kind === 'done-before' && need.length === 1 && same === undefined)
    return pairs(need, readPatterns(rule.parameters, 'before'))
  return []
}

function findCycles(pack: Pack, same: string | undefined): readonly PackIssue[] {
  const edges = pack.rules.flatMap((rule, i) => edgesOf(rule, i, same))
  const after = new Map<string, readonly Edge[]>()
  for (const edge of edges) after.set(edge.from, [...(after.get(edge.from) ?? []), edge])
  const turned = edges.find((edge) => canReach(after, edge.to, edge.from))
  if (turned === undefined) return []
  const rules = edges
    .filter((edge) => canReach(after, edge.to, edge.from))
    .map(({ rule }) => pack.rules[rule]?.id ?? '')
  return [
    {
      path: `$.rules[${turned.rule}].parameters`,
      found: `an order that turns back on itself through ${[...new Set(rules)].join(', ')}`,
      allowed: 'orders that one run can keep together',
    },
  ]
}

function canReach(after: ReadonlyMap<string, readonly Edge[]>, from: string, to: string): boolean {
  const seen = new Set<string>()
  const open = [from]
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    if (node === to) return true
    if (seen.has(node)) continue
    seen.add(node)
    open.push(...(after.get(node) ?? []).map((edge) => edge.to))
  }
  return false
}

function actsOf(rule: PackRule, name: string): readonly string[] {
  return readPatterns(rule.parameters, name)
    .filter((pattern) => Object.keys(pattern).length === 1)
    .flatMap((pattern) => listNames(pattern.do as Names))
}

function findOpposedRoles(pack: Pack): readonly PackIssue[] {
  const given = pack.rules.flatMap((rule, i) =>
    rule.kind === 'by-whom'
      ? actsOf(rule, 'of').map((act) => ({ act, i, roles: readList(rule.parameters, 'roles') }))
      : [],
  )
  return given.flatMap((a) =>
    given
      .filter((b) => b.i > a.i && b.act === a.act && !b.roles.some((role) => a.roles.includes(role)))
      .map((b) => ({
        path: `$.rules[${b.i}].parameters.roles`,
        found: `${b.act} by ${b.roles.join(', ')}`,
        allowed: `roles that ${pack.rules[a.i]?.id ?? ''} gives it to as well`,
      })),
  )
}

/** Never to be done, and yet asked for. */
function findForbidden(pack: Pack): readonly PackIssue[] {
  const forbidden = pack.rules.flatMap((rule) =>
    rule.kind === 'count' && rule.parameters['most'] === 0 ? actsOf(rule, 'of') : [],
  )
  return pack.rules.flatMap((rule, i) => {
    const asked = [...(rule.kind === 'count' && rule.parameters['least'] !== undefined ? actsOf(rule, 'of') : [])]
    if (rule.kind === 'done-before' && readPatterns(rule.parameters, 'need').length === 1)
      asked.push(...actsOf(rule, 'need'))
    return asked
      .filter((act) => forbidden.some((name) => matchesName(name, act)))
      .map((act) => ({
        path: `$.rules[${i}].parameters`,
        found: `asks for ${act}`,
        allowed: 'an act that no rule of the pack forbids',
      }))
  })
}

function findSwallowed(pack: Pack): readonly PackIssue[] {
  return pack.rules.flatMap((rule, i) =>
    [...readList(rule.parameters, 'consequenceOf'), ...readList(rule.parameters, 'causedBy')]
      .map((id) => pack.rules.find((other) => other.id === id))
      .filter((cause) => cause !== undefined && severityRank[cause.severity] < severityRank[rule.severity])
      .map((cause) => ({
        path: `$.rules[${i}].parameters.${readList(rule.parameters, 'causedBy').includes(cause?.id ?? '') ? 'causedBy' : 'consequenceOf'}`,
        found: `${rule.severity} swallowed by ${cause?.severity ?? ''} ${cause?.id ?? ''}`,
        allowed: 'a cause that weighs at least as much',
      })),
  )
}

/** Findings that would swallow one another whatever they are about: which of them stays is nobody's word. */
function findRoundCauses(pack: Pack): readonly PackIssue[] {
  const rootsOf = (id: string): readonly string[] =>
    readList(pack.rules.find((rule) => rule.id === id)?.parameters ?? {}, 'causedBy')
  return pack.rules.flatMap(({ id }, i) => {
    const reached = new Set<string>()
    const open = [...rootsOf(id)]
    for (let next = open.pop(); next !== undefined; next = open.pop()) {
      if (reached.has(next)) continue
      reached.add(next)
      open.push(...rootsOf(next))
    }
    return reached.has(id)
      ? [{ path: `$.rules[${i}].parameters.causedBy`, found: `${id} caused by itself`, allowed: 'causes that end' }]
      : []
  })
}

function findStrangeFloors({ elements, floors = {} }: Pack): readonly PackIssue[] {
  return Object.keys(floors)
    .filter((element) => !elements.includes(element))
    .map((element) => ({ path: `$.floors.${element}`, found: element, allowed: `one of ${elements.join(', ')}` }))
}
