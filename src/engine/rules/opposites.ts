/** Two rules of one pack that ask for opposite things of the same act: ways over a row, ends of a lead, answers. */
import type { Pack, PackRule } from './finding'
import type { PackIssue } from './language/parameterSpec'
import { readList } from './language/read'

export function findOpposites(pack: Pack): readonly PackIssue[] {
  return pack.rules.flatMap((a, i) =>
    pack.rules.slice(i + 1).flatMap((b, j) => {
      const found = a.kind === b.kind ? opposedIn(a, b) : undefined
      if (found === undefined) return []
      const path = `$.rules[${i + 1 + j}].parameters.${found}`
      return [{ path, found: show(b.parameters[found]), allowed: `what ${a.id} asks: ${show(a.parameters[found])}` }]
    }),
  )
}

/** The parameter in which they cannot both be kept. */
function opposedIn(a: PackRule, b: PackRule): string | undefined {
  const isSame = (...names: readonly string[]): boolean =>
    names.every((name) => JSON.stringify(a.parameters[name]) === JSON.stringify(b.parameters[name]))
  switch (a.kind) {
    case 'across':
      return isSame('of', 'as') && [a, b].every(isAfterModel) && !isSame('way') ? 'way' : undefined
    case 'lead-order': {
      const types = readList(b.parameters, 'types')
      const isShared = readList(a.parameters, 'types').some((type) => types.includes(type))
      return isShared && isSame('going') && !isSame('deadEnd') ? 'deadEnd' : undefined
    }
    case 'stated':
      return isSame('of', 'value') && [a, b].every(isFixed) && !isSame('equals') ? 'equals' : undefined
    default:
      return undefined
  }
}

const isAfterModel = ({ parameters }: PackRule): boolean => ['same-as', 'against'].includes(String(parameters['way']))
const isFixed = ({ parameters }: PackRule): boolean => parameters['equals'] !== undefined
const show = (value: unknown): string => JSON.stringify(value) ?? 'nothing'
