/** Questions about what the testers said. */
import type { SitePredicate } from '../language/predicate'

const testedDead: SitePredicate = {
  id: 'tested-dead',
  says: 'the last test on this wire gave no indication',
  about: 'act',
  takes: {},
  fails({ site, entry }) {
    const on = entry?.order.on ?? ''
    const last = [...site.evidence].reverse().find((it) => it.of === on && it.by === 'test')
    if (last === undefined) return { why: 'not-tested', on }
    return last.says.endsWith('no-indication') ? undefined : { why: 'indicated', on }
  },
}

export const testsPredicates = [testedDead]
