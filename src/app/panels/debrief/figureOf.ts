/** What was counted or measured beside what is asked, where the finding has both. */
import { say } from '../../../text'

const counted = ['count', 'turns', 'distance', 'gap'] as const

export function figureOf(facts: Readonly<Record<string, string | number>>): string {
  const name = counted.find((it) => typeof facts[it] === 'number')
  const limit = facts['least'] ?? facts['most']
  if (name === undefined || limit === undefined) return ''
  const found = Math.round(Number(facts[name]) * 100) / 100
  return say(facts['least'] === undefined ? 'findings.most' : 'findings.least', { found, limit })
}
