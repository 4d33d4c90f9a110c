/** Who may do an act, by role. */
import type { RuleKind } from '../language/kind'
import { allMatching } from '../language/pattern'
import { aboutEntry } from '../language/raw'
import { readList, readPatterns } from '../language/read'
import { findRole } from '../language/runView'

export const byWhom: RuleKind = {
  id: 'by-whom',
  says: 'which roles do an act',
  occasion: 'of',
  parameters: {
    of: { kind: 'patterns', least: 1, says: 'the acts' },
    roles: { kind: 'names', of: 'role', says: 'who may do them' },
  },
  find(view, parameters) {
    const roles = readList(parameters, 'roles')
    return allMatching(view, readPatterns(parameters, 'of')).flatMap((entry) => {
      const role = findRole(view, entry.order.who)
      return role !== undefined && roles.includes(role) ? [] : [aboutEntry(entry, entry.order.do, { role: role ?? '' })]
    })
  },
}
