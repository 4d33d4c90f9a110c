/** What changes under a job: its weather, a break, another person in charge, somebody else's source. */
import { findRemovedCause } from '../../site/liveningTraits'
import { weatherAt } from '../../site/weather'
import type { SitePredicate } from '../language/predicate'

const noThunder: SitePredicate = {
  id: 'no-thunder',
  says: 'no thunder is heard',
  about: 'site',
  takes: {},
  fails: ({ site }) => (weatherAt(site).thunder ? { why: 'thunder' } : undefined),
}

const lookedOver: SitePredicate = {
  id: 'looked-over-since-break',
  says: 'the place was never left by everybody, or somebody has been round it since',
  about: 'site',
  takes: {},
  fails({ site, view }) {
    const until = view.done.filter(({ end }) => end <= site.time)
    const back = until.findLast((it) => it.order.do === 'come-back' && it.before.marks['site-left'] !== undefined)
    if (back === undefined) return undefined
    const isSeen = until.some((it) => it.order.do === 'look-over-again' && it.start >= back.end)
    return isSeen ? undefined : { why: 'not-looked-over' }
  },
}

const chargeWalked: SitePredicate = {
  id: 'charge-walked',
  says: 'who takes the charge in this act has walked the job',
  about: 'act',
  takes: {},
  fails({ site, entry }) {
    const next = String(entry?.order.values['next'])
    return `walked-job:${next}` in site.marks ? undefined : { why: 'not-walked', person: next }
  },
}

const chargeReported: SitePredicate = {
  id: 'charge-reported',
  says: 'the charge was not handed over, or the control room knows who has it',
  about: 'site',
  takes: {},
  fails({ site: { marks } }) {
    const given = marks['charge-handed-over']
    const isTold = given === undefined || (marks['charge-reported'] ?? -Infinity) >= given
    return isTold ? undefined : { why: 'not-reported' }
  },
}

const ownSourcesHeld: SitePredicate = {
  id: 'own-sources-held',
  says: "nobody's own source can feed the section or its low-voltage wires: locked off, or its transformer cut off",
  about: 'site',
  takes: {},
  fails({ site }) {
    const open = site.scenario.livenings.find(
      (it) => (it.kind === 'back-feed' || it.kind === 'low-voltage-fed') && findRemovedCause(site, it) === undefined,
    )
    return open === undefined || !('source' in open) ? undefined : { why: 'source-open', source: open.source }
  },
}

const pointUnearthed: SitePredicate = {
  id: 'point-unearthed',
  says: 'no earth is on the switch of the act',
  about: 'act',
  takes: {},
  fails({ site, entry }) {
    const on = entry?.order.on ?? ''
    return site.switches[on]?.earth ? { why: 'still-earthed', switch: on } : undefined
  },
}

const stepCarriedOut: SitePredicate = {
  id: 'step-carried-out',
  says: 'the handle of the act stands as the step in hand for it says',
  about: 'act',
  takes: {},
  fails({ site, entry }) {
    const on = entry?.order.on ?? ''
    const { step } = site.paper
    const isOpen = step?.switch === on && site.switches[on]?.handle !== step.to
    return isOpen ? { why: 'not-done', switch: on } : undefined
  },
}

export const changesPredicates = [
  noThunder,
  lookedOver,
  chargeWalked,
  chargeReported,
  ownSourcesHeld,
  pointUnearthed,
  stepCarriedOut,
]
