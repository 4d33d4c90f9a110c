/**
 * At a house or yard behind a transformer: asks for a source of their own and to be let at the main switch, and listens.
 * What is answered is what the owner knows and says; what is heard is what runs now.
 */
import type { Site } from '../../site/site'
import type { Action } from '../action'
import { mark, perceive } from '../changes'
import { atMain, consentTo } from '../mains'
import { thingIn } from '../orderValues'

const premises = (site: Site): readonly string[] => (site.scenario.premises ?? []).map((it) => it.id).sort()

export const askOwner: Action = {
  id: 'ask-owner',
  covers: ['A32'],
  things: premises,
  check: atMain,
  takes: () => 90,
  apply: (site, order) => {
    const thing = thingIn(order)
    const place = site.scenario.premises?.find(({ id }) => id === thing)
    const answers = place?.answers ?? 'nobody-home'
    const isLetIn = answers !== 'nobody-home' && place?.consents === true
    const consents = isLetIn ? 'owner.consents' : 'owner.refuses'
    const hear = (says: string) => ({ of: thing, by: 'hear', says }) as const
    const lines = answers === 'nobody-home' ? [hear('owner.nobody-home')] : [hear(`owner.${answers}`), hear(consents)]
    return perceive(isLetIn ? mark(site, consentTo(thing)) : site, order.who, ...lines)
  },
}

/** A set runs when it has struck and nobody has proved it off; an inverter makes no noise. */
function isHeard({ livening, scenario }: Site, thing: string): boolean {
  const struck = livening?.provedOff === false ? scenario.livenings.find((it) => it.id === livening.id) : undefined
  const isOwn = (struck?.kind === 'back-feed' || struck?.kind === 'low-voltage-fed') && struck.source === thing
  return isOwn && scenario.embedded?.find(({ id }) => id === thing)?.kind === 'generator'
}

/** Cables, panels and an exhaust are seen from the yard by whoever looks for them. */
export const searchPremises: Action = {
  id: 'search-premises',
  covers: ['A32'],
  things: premises,
  check: atMain,
  takes: () => 120,
  apply: (site, order) => {
    const thing = thingIn(order)
    const kind = site.scenario.embedded?.find(({ id }) => id === thing)?.kind
    const says = kind === undefined ? 'owner.nothing-seen' : `owner.seen-${kind}`
    const heard = isHeard(site, thing) ? 'owner.set-runs' : 'owner.quiet'
    return perceive(site, order.who, { of: thing, by: 'look', says }, { of: thing, by: 'hear', says: heard })
  },
}
