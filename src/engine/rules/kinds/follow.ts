/** After one act the same person's next act is a certain other one: a clamp is tugged before anything else is done. */
import type { RuleKind } from '../language/kind'
import { isLinked, partOf } from '../language/link'
import { allDone, matchesAny } from '../language/pattern'
import { aboutEntry, aboutMissing } from '../language/raw'
import { readLinks, readPatterns } from '../language/read'
import { endOf } from '../language/runView'

export const follow: RuleKind = {
  id: 'follow',
  says: 'what the same person does next after an act',
  isSequence: true,
  occasion: 'after',
  wanted: 'next',
  parameters: {
    after: { kind: 'patterns', least: 1, says: 'the act' },
    next: { kind: 'patterns', least: 1, says: 'what comes next (any of these)' },
    link: { kind: 'links', optional: true, says: 'what must be the same in both, the first act first' },
  },
  find(view, parameters) {
    const next = readPatterns(parameters, 'next')
    const links = readLinks(parameters, 'link')
    return allDone(view, readPatterns(parameters, 'after')).flatMap((act) => {
      const then = view.done.find((entry) => entry.order.who === act.order.who && entry.start >= act.end)
      const subject = partOf(view, act, links[0]?.[0] ?? 'on') ?? ''
      const facts = { after: act.order.do, ...(act.order.on === undefined ? {} : { afterOn: act.order.on }) }
      if (then === undefined) return [aboutMissing(endOf(view), subject, { who: act.order.who, ...facts })]
      const isRight = matchesAny(view, next, then) && isLinked(view, links, act, then)
      return isRight ? [] : [{ ...aboutEntry(then, subject, facts), touches: [act.index] }]
    })
  },
}
