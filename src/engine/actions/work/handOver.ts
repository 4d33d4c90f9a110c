/**
 * One person in charge hands the job to another: walk it together, give over papers and keys, tell the control room. From
 * then on everybody is briefed and signs on anew, and the job is declared safe again by whoever is in charge.
 */
import { findInCharge, isHere } from '../../site/presence'
import { distance } from '../../site/place'
import { groundPointOf, isAloft, requirePerson } from '../../site/questions'
import type { PersonId } from '../../site/scenario'
import type { Site } from '../../site/site'
import type { Action, Order } from '../action'
import { changePaper, changePerson, mark, perceive, tell, write } from '../changes'
import { onSite } from '../conditions'
import { choiceIn, listIn } from '../orderValues'
import { all, refuse, type Condition } from '../refuse'

/** Near enough to show each other the job, metres (common practice, no source). */
const together = 10

const papers = ['permit', 'register', 'keys', 'plan'] as const

const able = ({ scenario }: Site): readonly PersonId[] =>
  scenario.crew.filter((it) => it.role === 'person-in-charge').map((it) => it.id)

/** Only where there is somebody to hand it to. */
const charge = (site: Site): readonly string[] => (able(site).length > 1 ? ['charge'] : [])

function isWith(site: Site, a: PersonId, b: PersonId): boolean {
  const stand = [a, b].every((id) => isHere(site, id) && !isAloft(requirePerson(site, id)))
  return stand && distance(groundPointOf(site, a), groundPointOf(site, b)) <= together
}

const inCharge: Condition = (site, order) =>
  findInCharge(site) === order.who ? undefined : refuse(order, 'not-in-charge')

/** What one sees who walks round it with somebody who knows it. */
function seen(site: Site): Readonly<Record<string, number>> {
  const items = Object.values(site.items)
  return {
    clamps: site.clamps.length,
    rods: site.rods.length,
    covers: site.cover ? 1 : 0,
    guards: site.guards.length,
    out: items.filter((it) => it.bookedOut && !it.bookedIn).length,
  }
}

export const walkJob: Action = {
  id: 'walk-job',
  covers: ['A75'],
  things: charge,
  moves: true,
  check: all(onSite, (site, order) => {
    const leader = findInCharge(site)
    if (leader === order.who) return refuse(order, 'already-so')
    return leader !== undefined && isWith(site, leader, order.who) ? undefined : refuse(order, 'not-together')
  }),
  takes: () => 300,
  apply: (site, order) => {
    const signed = Object.values(site.persons).filter((it) => it.signedOn).length
    const walked = mark(site, `walked-job:${order.who}`)
    return perceive(
      walked,
      order.who,
      { of: 'charge', by: 'look', says: 'see.job', values: seen(site) },
      { of: 'charge', by: 'read', says: 'see.signed', values: { signed, crew: here(site).length } },
    )
  },
}

const here = (site: Site): readonly PersonId[] => Object.keys(site.persons).filter((id) => isHere(site, id))

export const handOverCharge: Action = {
  id: 'hand-over-charge',
  covers: ['A12', 'A75'],
  things: charge,
  values: {
    next: { kind: 'choice', many: false, of: able },
    papers: { kind: 'choice', many: true, of: () => papers },
  },
  check: all(onSite, inCharge, (site, order) => {
    const next = choiceIn(order, 'next')
    if (next === order.who) return refuse(order, 'already-so')
    if (!isHere(site, next)) return refuse(order, 'not-here-yet', { person: next })
    return isWith(site, order.who, next) ? undefined : refuse(order, 'not-together')
  }),
  takes: (_site, order) => 60 + 60 * listIn(order, 'papers').length,
  apply: (site, order) => {
    const next = choiceIn(order, 'next')
    // Who is away at a switch was told by whoever sent them there, and stays signed on.
    const onJob = Object.keys(site.persons).filter((id) => requirePerson(site, id).place.kind !== 'switch')
    const anew = onJob.reduce(
      (now, id) => changePerson(now, id, { signedOn: false, briefed: false }),
      changePaper(site, { inCharge: next, safeToWork: false }),
    )
    const given = mark(write(anew, 'handed-over', [...listIn(order, 'papers')].sort()), 'charge-handed-over')
    return tell(given, order, 'charge', { next, papers: listIn(order, 'papers').length })
  },
}

export const reportCharge: Action = {
  id: 'report-charge',
  covers: ['A75'],
  things: charge,
  speech: true,
  check: (site: Site, order: Order) => {
    if (site.paper.inCharge === undefined) return refuse(order, 'not-in-charge')
    return inCharge(site, order)
  },
  takes: () => 45,
  apply: (site, order) =>
    perceive(mark(site, 'charge-reported'), order.who, {
      of: 'control',
      by: 'hear',
      says: 'control.charge-noted',
      values: { person: order.who },
    }),
}
