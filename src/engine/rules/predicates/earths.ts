/** Questions about what is fitted at the pole top: earths, bonds, cover, guards. */
import { isEarthLead } from '../../gear/earthLeads'
import { clampsOf, clampsOn, effectiveParameters, numberOf, requireItem } from '../../site/questions'
import { isOnNextPole, withoutPole } from '../../site/nextPole'
import { findSectionNeutral } from '../../site/findSectionNeutral'
import type { ThingId } from '../../site/scenario'
import type { Clamp, Site } from '../../site/site'
import type { SitePredicate } from '../language/predicate'
import { poleOf, thingAt, workedPole } from './workedPole'

const isLead = (site: Site, clamp: Clamp): boolean => isEarthLead(requireItem(site, clamp.lead).type)

/** A clamp of a lead whose earth end stands on a rod. */
const isEarthing = (site: Site, clamp: Clamp): boolean =>
  isLead(site, clamp) && clampsOf(site, clamp.lead).some((other) => other.end === 'earth')

/** A clamp of a lead that has another one on the neutral wire of the line. */
function isOnNeutral(site: Site, clamp: Clamp): boolean {
  const neutral = findSectionNeutral(site.scenario)
  return (
    isLead(site, clamp) &&
    neutral !== undefined &&
    clampsOf(site, clamp.lead).some(({ on }) => on === neutral.id || on === 'pole-earth')
  )
}

function seatTurns(site: Site, clamp: Clamp): number {
  return numberOf(effectiveParameters(requireItem(site, clamp.lead), clamp.end), 'seatTurns')
}

const conductorsEarthed: SitePredicate = {
  id: 'conductors-earthed',
  says: 'every conductor of the section has, at the pole of the work, an earth clamp of a lead that is on a rod',
  about: 'site',
  takes: { neutral: { kind: 'flag', optional: true, says: 'a lead on the neutral wire of the line does as well' } },
  fails({ site, person }, { neutral }) {
    const pole = poleOf(site, person)
    const isEnough = (clamp: Clamp): boolean =>
      isEarthing(site, clamp) || (neutral === true && isOnNeutral(site, clamp))
    const bare = site.scenario.conductors
      .map(({ id }) => thingAt(id, pole))
      .find((id) => !clampsOn(site, id).some(isEnough))
    return bare === undefined ? undefined : { why: 'not-earthed', conductor: bare }
  },
}

const leadOnNeutral: SitePredicate = {
  id: 'lead-on-neutral',
  says: 'an earth lead is on the neutral wire of the line',
  about: 'site',
  takes: {},
  fails: ({ site }) =>
    site.clamps.some((clamp) => isOnNeutral(site, clamp)) ? undefined : { why: 'neutral-not-used' },
}

const anyEarthOn: SitePredicate = {
  id: 'any-earth-on',
  says: 'at least one conductor carries an earth clamp',
  about: 'site',
  takes: {},
  fails({ site }) {
    const isOn = site.scenario.conductors.some(({ id }) => clampsOn(site, id).length > 0)
    return isOn ? undefined : { why: 'no-earth' }
  },
}

const clampsSeated: SitePredicate = {
  id: 'clamps-seated',
  says: 'every clamp that is on has been screwed to its seat',
  about: 'site',
  takes: {},
  fails({ site }) {
    const loose = site.clamps.find((clamp) => clamp.turns < seatTurns(site, clamp))
    return loose === undefined
      ? undefined
      : { why: 'loose', lead: loose.lead, on: loose.on, turns: loose.turns, least: seatTurns(site, loose) }
  },
}

const clampsTugged: SitePredicate = {
  id: 'clamps-tugged',
  says: 'every earth clamp on a conductor has been tugged',
  about: 'site',
  takes: {},
  fails({ site }) {
    const untried = site.clamps.find((clamp) => clamp.end !== 'earth' && isLead(site, clamp) && !clamp.tugged)
    return untried === undefined ? undefined : { why: 'not-tugged', lead: untried.lead, on: untried.on }
  },
}

const seatBrushed: SitePredicate = {
  id: 'seat-brushed',
  says: 'the seat on this wire has been brushed',
  about: 'act',
  takes: {},
  fails({ site, entry }) {
    const on = entry?.order.on ?? ''
    const isConductor = site.scenario.conductors.some(({ id }) => id === withoutPole(on))
    return !isConductor || site.brushed.includes(on) ? undefined : { why: 'not-brushed', on }
  },
}

const lvGuarded: SitePredicate = {
  id: 'lv-guarded',
  says: 'the low-voltage wires that the pack names carry guards: the two beside the pole, or all in reach',
  about: 'site',
  takes: {},
  fails({ site, view, person }) {
    if (poleOf(site, person) === 'next') return undefined
    const wires = [...site.scenario.lv.wires].sort((a, b) => Math.abs(a.x) - Math.abs(b.x) || (a.id < b.id ? -1 : 1))
    const wanted = view.pack.lvGuard === 'twoCentral' ? wires.slice(0, 2) : wires
    const bare = wanted.find(({ id }) => !site.guards.some((guard) => guard.on === id))
    return bare === undefined ? undefined : { why: 'not-guarded', wire: bare.id }
  },
}

const covered: SitePredicate = {
  id: 'pole-covered',
  says: 'the cover reaches at least over this part of the pole',
  about: 'site',
  takes: {
    from: { kind: 'number', least: 0, says: 'metres above ground' },
    to: { kind: 'number', least: 0, says: 'metres above ground' },
  },
  fails({ site }, given) {
    const { cover } = site
    if (cover === null) return { why: 'no-cover' }
    const from = Number(given['from'])
    const to = Number(given['to'])
    return cover.from <= from && cover.to >= to ? undefined : { why: 'cover-short', from: cover.from, to: cover.to }
  },
}

const anyCover: SitePredicate = {
  id: 'any-cover',
  says: 'a cover is on the pole of the work',
  about: 'site',
  takes: {},
  fails: ({ site }) => (site.cover?.pole === workedPole(site) && site.cover ? undefined : { why: 'no-cover' }),
}

const coverChecked: SitePredicate = {
  id: 'cover-checked',
  says: 'the cover has been looked over since it went on',
  about: 'site',
  takes: {},
  fails: ({ site }) => (site.cover?.checked === true ? undefined : { why: 'cover-not-checked' }),
}

const metalBonded: SitePredicate = {
  id: 'metal-bonded',
  says: 'the metalwork at the pole of the work is bonded to an earthed conductor',
  about: 'site',
  takes: { neutral: { kind: 'flag', optional: true, says: 'a lead on the neutral wire of the line does as well' } },
  fails({ site }, { neutral }) {
    const isHere = ({ on }: Clamp): boolean => isOnNextPole(on) === (workedPole(site) === 'next')
    const metal = site.clamps.filter((clamp) => clamp.end === 'metal' && isHere(clamp))
    const bonded = metal.some((clamp) => isJoined(site, clamp, neutral === true))
    return bonded ? undefined : { why: 'not-bonded' }
  },
}

/** The other end of this bond is on a conductor that is earthed. */
function isJoined(site: Site, metal: Clamp, byNeutral: boolean): boolean {
  return clampsOf(site, metal.lead).some((clamp) => clamp.end === 'line' && isEarthed(site, clamp.on, byNeutral))
}

function isEarthed(site: Site, thing: ThingId, byNeutral: boolean): boolean {
  return clampsOn(site, thing).some((clamp) => isEarthing(site, clamp) || (byNeutral && isOnNeutral(site, clamp)))
}

const anyBond: SitePredicate = {
  id: 'any-bond-on',
  says: 'an end of a bond is on',
  about: 'site',
  takes: {},
  fails: ({ site }) =>
    site.clamps.some((clamp) => requireItem(site, clamp.lead).type === 'bond-lead') ? undefined : { why: 'no-bond' },
}

const anyGuard: SitePredicate = {
  id: 'any-guard-on',
  says: 'a low-voltage guard is on',
  about: 'site',
  takes: {},
  fails: ({ site }) => (site.guards.length > 0 ? undefined : { why: 'no-guard' }),
}

const neutralFree: SitePredicate = {
  id: 'lv-neutral-free',
  says: 'nothing joins a low-voltage wire to the work earths',
  about: 'site',
  takes: {},
  fails({ site }) {
    const wires = site.scenario.lv.wires.map(({ id }) => id)
    // Bonds from wire to wire join none of them to anything else.
    const isJoined = (lead: string): boolean => site.clamps.some((it) => it.lead === lead && !wires.includes(it.on))
    const clamp = site.clamps.find(({ on, lead }) => wires.includes(on) && isJoined(lead))
    return clamp === undefined ? undefined : { why: 'lv-bonded', wire: clamp.on, lead: clamp.lead }
  },
}

const nothingUntied: SitePredicate = {
  id: 'nothing-untied',
  says: 'every conductor is tied in',
  about: 'site',
  takes: {},
  fails({ site }) {
    const wires = site.scenario.conductors.flatMap(({ id }) => [id, thingAt(id, 'next')])
    const loose = wires.find((id) => site.marks[`untied:${id}`] !== undefined)
    return loose === undefined ? undefined : { why: 'untied', conductor: loose }
  },
}

const barrierUp: SitePredicate = {
  id: 'barrier-up',
  says: 'the barrier stands',
  about: 'site',
  takes: {},
  fails: ({ site }) => (site.barrier === null ? { why: 'no-barrier' } : undefined),
}

const anyLeadOnRod: SitePredicate = {
  id: 'lead-on-rod',
  says: 'a lead is on a rod',
  about: 'site',
  takes: {},
  fails: ({ site }) => (site.clamps.some((clamp) => clamp.end === 'earth') ? undefined : { why: 'no-lead-on-rod' }),
}

export const earthsPredicates = [
  conductorsEarthed,
  leadOnNeutral,
  anyEarthOn,
  clampsSeated,
  clampsTugged,
  seatBrushed,
  lvGuarded,
  covered,
  anyCover,
  coverChecked,
  metalBonded,
  anyBond,
  anyGuard,
  neutralFree,
  nothingUntied,
  barrierUp,
  anyLeadOnRod,
]
