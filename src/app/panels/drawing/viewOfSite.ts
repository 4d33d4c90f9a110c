/** The crew's picture as the plan and the elevation draw it. */
import type { Belief, ConductorBelief, PersonBelief } from '../../../engine'
import { personLetters } from '../../../text'
import type { PostureName } from './Figure'
import type { WireState } from './Marks'
import type { LeadView, PersonView, SiteView } from './siteView'

export function viewOfSite(belief: Belief): SiteView {
  const { sheet } = belief
  return {
    wires: sheet.conductors.map(({ id, phase, x, height }) => ({
      id,
      letter: phase,
      across: x,
      height,
      state: stateOf(
        belief.conductors.find((it) => it.id === id),
        belief,
      ),
    })),
    lv: sheet.lv.wires.map(({ id, x, height }) => ({
      id,
      across: x,
      height,
      isGuarded: belief.guards.some((guard) => guard.on === id),
    })),
    pole: {
      kind: sheet.pole.kind,
      number: sheet.pole.number,
      height: sheet.pole.height + sheet.pole.buttLength,
      butt: sheet.pole.buttLength,
      arm: sheet.pole.armHeight,
      lv: sheet.pole.lvHeight,
      boltsTo: sheet.pole.stepBoltsTo,
      secondLeg: sheet.place.secondLeg,
    },
    stay: sheet.stay?.anchor,
    crossingAlong: sheet.crossing?.along ?? null,
    surroundings: sheet.hazards.flatMap((it) => (it.looks ? [{ ...it, looks: it.looks }] : [])),
    work: sheet.work.conductor,
    arm: sheet.place.arm,
    west: [...sheet.switches].filter((it) => it.along < 0).sort((a, b) => b.along - a.along)[0]?.id ?? '',
    rods: belief.rods.map(({ item, at, depth }) => ({
      id: item,
      x: at.x,
      y: at.y,
      depth,
      hasLead: belief.clamps.some((clamp) => clamp.on === `rod/${item}`),
    })),
    leads: leadsOf(belief),
    cover: belief.cover,
    barrier: belief.barrier,
    truck: belief.marks['truck-parked'] === undefined ? null : truckOf(belief),
    hasRope: belief.hauled.length > 0,
    people: belief.persons.map((person) => personView(belief, person)),
    isInsulatorNew: belief.insulator === 'replaced',
  }
}

/** Nobody trusts a wire: untested and tested-live look the same; after a livening an earthed one stands at site potential. */
function stateOf(conductor: ConductorBelief | undefined, belief: Belief): WireState {
  const isRisen = belief.livening !== null && !belief.livening.provedOff
  if (!conductor || conductor.state === 'treat-as-live') return 'live'
  if (conductor.state === 'clamped') return isRisen ? 'site-potential' : 'earthed'
  if (isRisen) return 'live'
  const tested = conductor.lastTest?.at ?? Infinity
  return belief.evidence.some((it) => it.says === 'did.say-dead' && it.of === conductor.id && it.at >= tested)
    ? 'proven'
    : 'live'
}

function leadsOf(belief: Belief): readonly LeadView[] {
  const ids = [...new Set([...belief.clamps.map((clamp) => clamp.lead), ...belief.hauled])]
  return ids
    .filter((id) => ['earth-lead', 'bond-lead'].includes(belief.items.find((item) => item.id === id)?.type ?? ''))
    .map((id) => {
      const clamps = belief.clamps.filter((clamp) => clamp.lead === id)
      const order = ['earth', '1', '2', '3', 'metal', 'line']
      const sorted = [...clamps].sort((a, b) => order.indexOf(a.end) - order.indexOf(b.end))
      return {
        id,
        on: sorted.map((clamp) => clamp.on),
        ends: sorted.map((clamp) => clamp.end),
        isBond: belief.items.find((item) => item.id === id)?.type === 'bond-lead',
        isHanging: belief.hauled.includes(id),
      }
    })
}

/** The truck is where its parking put it; belief keeps that in the evidence. */
function truckOf(belief: Belief): { x: number; y: number } | null {
  const parked = belief.evidence.findLast((it) => it.says === 'did.park-truck')
  const { x, y } = parked?.values ?? {}
  return typeof x === 'number' && typeof y === 'number' ? { x, y } : null
}

const typeOf = (belief: Belief, id: string) => belief.items.find((item) => item.id === id)?.type

export function postureOf(belief: Belief, { place, holds }: PersonBelief): PostureName {
  if (place.kind !== 'pole' || place.station === 'foot') return 'standing'
  return holds.some((id) => typeOf(belief, id) === 'operating-stick') ? 'stick' : 'reaching'
}

export const hasBoots = (belief: Belief, { wears }: PersonBelief): boolean =>
  wears.some((id) => typeOf(belief, id) === 'boots')

function personView(belief: Belief, person: PersonBelief): PersonView {
  const { place } = person
  return {
    id: person.id,
    letters: personLetters(belief.persons, person.id),
    at: place.kind === 'ground' ? place.at : { x: place.kind === 'pole' ? -0.6 : 0, y: 0 },
    height: place.kind === 'pole' ? belief.sheet.pole.feetAt[place.station] : 0,
    posture: postureOf(belief, person),
    hasBoots: hasBoots(belief, person),
    isFar: place.kind === 'switch',
  }
}
