/** Everything that a pack found, what follows from another finding as well. */
import type { Finding } from '../../../src/engine'

export type Told = Pick<Finding, 'rule' | 'at' | 'facts' | 'entry'>

export const toldIn = (findings: readonly Finding[]): readonly Told[] =>
  findings.flatMap((finding) => [finding, ...finding.leadsTo])
