/** New sites from old: the only way in which actions change anything. */
import { nearestPole } from '../site/nextPole'
import { groundPointOf, isAloft, requireItem, requirePerson } from '../site/questions'
import type { ItemId, PersonId, ThingId } from '../site/scenario'
import type { Evidence, Item, Paper, Person, Site, SwitchState } from '../site/site'
import { requireSwitch } from '../site/questions'
import type { Order } from './action'

export function changePerson(site: Site, id: PersonId, change: Partial<Person>): Site {
  return { ...site, persons: { ...site.persons, [id]: { ...requirePerson(site, id), ...change } } }
}

export function changeItem(site: Site, id: ItemId, change: Partial<Item>): Site {
  return { ...site, items: { ...site.items, [id]: { ...requireItem(site, id), ...change } } }
}

export function changeSwitch(site: Site, id: ThingId, change: Partial<SwitchState>): Site {
  return { ...site, switches: { ...site.switches, [id]: { ...requireSwitch(site, id), ...change } } }
}

export function changePaper(site: Site, change: Partial<Paper>): Site {
  return { ...site, paper: { ...site.paper, ...change } }
}

/** A switching step is good for one device and one time: what it was received for has been done. */
export function finishStep(site: Site, device?: ThingId): Site {
  const { step } = site.paper
  return step !== null && (device === undefined || step.switch === device) ? changePaper(site, { step: null }) : site
}

/** Takes the item from whoever has it and puts it there. */
export function moveItem(site: Site, id: ItemId, where: Item['where']): Site {
  const { where: was } = requireItem(site, id)
  let next = site
  if (was.kind === 'person') {
    const { holds, wears } = requirePerson(site, was.person)
    next = changePerson(next, was.person, {
      holds: holds.filter((it) => it !== id),
      wears: wears.filter((it) => it !== id),
    })
  }
  return changeItem(next, id, { where })
}

/** Hanging at the top of the pole that the person is on. */
export function hangingBy(site: Site, who: PersonId): Item['where'] {
  const pole = nearestPole(site.scenario, groundPointOf(site, who))
  return { kind: 'aloft', ...(pole === undefined ? {} : { at: pole }) }
}

/** Puts it down where the person is: on a hook up the pole, at the switch, or on the tarp. */
export function putDownHere(site: Site, id: ItemId, who: PersonId): Site {
  const person = requirePerson(site, who)
  if (person.place.kind === 'switch') return moveItem(site, id, { kind: 'left', at: person.place.id })
  return moveItem(site, id, isAloft(person) ? hangingBy(site, who) : { kind: 'tarp' })
}

export function putInHands(site: Site, id: ItemId, person: PersonId): Site {
  const next = moveItem(site, id, { kind: 'person', person })
  return changePerson(next, person, { holds: [...requirePerson(next, person).holds, id] })
}

export type Perceived = Pick<Evidence, 'of' | 'by' | 'says'> & { readonly values?: Evidence['values'] }

/** Adds what the acting person perceived, now. */
export function perceive(site: Site, who: PersonId, ...perceived: readonly Perceived[]): Site {
  const added = perceived.map(({ of, by, says, values }) => ({
    at: site.time,
    who,
    of,
    by,
    says,
    values: values ?? {},
  }))
  return { ...site, evidence: [...site.evidence, ...added] }
}

/** What the person did, as the others may hear and see it. */
export function tell(site: Site, order: Order, of: string, values: Evidence['values'] = {}): Site {
  return perceive(site, order.who, { of, by: 'do', says: `did.${order.do}`, values })
}

/** Sets a fact with the present second. */
export function mark(site: Site, key: string): Site {
  return { ...site, marks: { ...site.marks, [key]: site.time } }
}

export function unmark(site: Site, key: string): Site {
  return { ...site, marks: Object.fromEntries(Object.entries(site.marks).filter(([name]) => name !== key)) }
}

export function write(site: Site, key: string, value: string | readonly string[]): Site {
  return { ...site, written: { ...site.written, [key]: value } }
}
