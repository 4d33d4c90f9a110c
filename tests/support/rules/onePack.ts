/** A pack of the rules given, for tests of kinds. */
import type { Pack, PackRule } from '../../../src/engine'

export type ShortRule = Pick<PackRule, 'kind' | 'parameters'> & Partial<PackRule>

export function onePack(...rules: readonly ShortRule[]): Pack {
  return {
    id: 'test-pack',
    edition: '1',
    effectiveFrom: '2031-01-01',
    permitAfter: 'isolation',
    lvGuard: 'twoCentral',
    onCritical: 'goOn',
    planOnSite: true,
    elements: ['any'],
    rules: rules.map((rule, i) => ({
      id: `rule-${i}`,
      severity: 'major' as const,
      element: 'any',
      asks: 'asks',
      reason: 'reason',
      source: 'test',
      ...rule,
    })),
  }
}
