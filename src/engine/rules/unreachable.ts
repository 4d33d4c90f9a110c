/**
 * Patterns that no act can ever match: a value that the act does not have, a type of gear that the act is never done
 * with, an act asked of a role to which the pack itself does not give it. A rule on such a pattern never finds anything,
 * or always does.
 */
import type { Pack, PackRule } from './finding'
import { ruleKinds } from './kinds'
import type { Vocabulary } from './language/checkParameters'
import { listNames, matchesName, type Names } from './language/glob'
import type { PackIssue } from './language/parameterSpec'
import type { Pattern } from './language/pattern'
import { readList, readPatterns } from './language/read'

export function findUnreachable(pack: Pack, vocabulary: Vocabulary): readonly PackIssue[] {
  const rolesByAct = listRoles(pack)
  return pack.rules.flatMap((rule, i) =>
    patternsIn(rule).flatMap(({ name, pattern }) => {
      const path = `$.rules[${i}].parameters.${name}`
      const acts = listNames(pattern.do ?? '*').filter((act) => !act.includes('*'))
      return [
        ...findStrangeValues(pattern, acts, path, vocabulary),
        ...findStrangeGear(pattern, acts, path, vocabulary),
        ...(rule.kind === 'done-before' && name === 'need' ? findNobody(pattern, acts, path, rolesByAct) : []),
      ]
    }),
  )
}

function patternsIn(rule: PackRule): readonly { readonly name: string; readonly pattern: Pattern }[] {
  const specs = ruleKinds.get(rule.kind)?.parameters ?? {}
  return Object.keys(specs)
    .filter((name) => specs[name]?.kind === 'patterns' || specs[name]?.kind === 'pattern')
    .flatMap((name) => readPatterns(rule.parameters, name).map((pattern) => ({ name, pattern })))
}

/** Every act of the pattern lacks the value. */
function findStrangeValues(pattern: Pattern, acts: readonly string[], path: string, { takes }: Vocabulary) {
  if (takes === undefined || acts.length === 0) return []
  const known = acts.flatMap((act) => takes.get(act)?.values ?? [])
  return Object.keys(pattern.values ?? {})
    .filter((value) => !known.includes(value))
    .map((value) => ({
      path: `${path}.values.${value}`,
      found: `${acts.join(', ')} has no ${value}`,
      allowed: known.length === 0 ? 'no values: the act has none' : `one of ${known.join(', ')}`,
    }))
}

function findStrangeGear(pattern: Pattern, acts: readonly string[], path: string, { takes }: Vocabulary) {
  if (takes === undefined || acts.length === 0 || pattern.itemType === undefined) return []
  const types = acts.map((act) => takes.get(act)?.withTypes)
  if (types.includes(undefined)) return []
  const known = types.flatMap((each) => each ?? [])
  return listNames(pattern.itemType as Names)
    .filter((name) => !known.some((type) => matchesName(name, type)))
    .map((name) => ({
      path: `${path}.itemType`,
      found: `${acts.join(', ')} with ${name}`,
      allowed: `one of ${known.join(', ')}`,
    }))
}

/** To whom the pack gives each act, where it does. */
function listRoles(pack: Pack): ReadonlyMap<string, readonly string[]> {
  const given = new Map<string, readonly string[]>()
  for (const rule of pack.rules.filter(({ kind }) => kind === 'by-whom')) {
    const roles = readList(rule.parameters, 'roles')
    const acts = readPatterns(rule.parameters, 'of')
      .filter((pattern) => Object.keys(pattern).length === 1)
      .flatMap((pattern) => listNames(pattern.do ?? []))
    for (const act of acts)
      given.set(
        act,
        (given.get(act) ?? roles).filter((role) => roles.includes(role)),
      )
  }
  return given
}

function findNobody(
  pattern: Pattern,
  acts: readonly string[],
  path: string,
  rolesByAct: ReadonlyMap<string, readonly string[]>,
): readonly PackIssue[] {
  const asked = pattern.role === undefined ? undefined : listNames(pattern.role)
  return acts
    .filter((act) => {
      const roles = rolesByAct.get(act)
      return roles?.every((role) => asked !== undefined && !asked.some((name) => matchesName(name, role)))
    })
    .map((act) => ({
      path: `${path}.role`,
      found: `${act} by ${asked?.join(', ') ?? 'anybody'}`,
      allowed: `a role that the pack gives it to: ${rolesByAct.get(act)?.join(', ') || 'it gives it to none'}`,
    }))
}
