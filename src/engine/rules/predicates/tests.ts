/** Questions about what the testers said. */
import type { SitePredicate } from '../language/predicate'

const testedDead: SitePredicate = {
  id: 'tested-dead',
  says: 'the last test on this wire gave no indication',
  about: 'act',
  takes: {},
  fails({ site, entry }) {
    const on = entry?.order.on ?? ''
    const last = site.evidence.findLast((it) => it.of === on && it.by === 'test')
    if (last === undefined) return { why: 'not-tested', on }
    return last.says === 'test.silent' ? undefined : { why: 'indicated', on }
  },
}

const testerProved: SitePredicate = {
  id: 'tester-proved',
  says: 'the tester of the act indicated when it was last proved',
  about: 'act',
  takes: {},
  fails({ site, entry }) {
    const tester = entry?.order.with ?? ''
    const last = site.evidence.findLast((it) => it.of === tester && it.by === 'test' && 'on' in it.values)
    return last === undefined || last.says === 'test.indicates' ? undefined : { why: 'silent-when-proved', tester }
  },
}

export const testsPredicates = [testedDead, testerProved]
