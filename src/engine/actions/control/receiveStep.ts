/**
 * Takes a switching step from the control room and repeats it: with the device's number, another one, or none. Control
 * answers; what a bad line made of the number may pass for right.
 */
import { clearedUp, findMisheard, findTurned, heardAs, isTakenAsRight } from '../../site/misheard'
import { findSwitch } from '../../site/questions'
import type { ThingId } from '../../site/scenario'
import type { Site } from '../../site/site'
import type { Action } from '../action'
import { changePaper, mark, perceive } from '../changes'
import { switchKnown } from '../conditions'
import { choiceIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { switches } from '../things'

/** Repeated without the number. */
const noNumber = 'understood'

/** Each device by its number and by its number turned round, and a word without any. */
function numbersSaid(site: Site): readonly string[] {
  const labels = site.scenario.switches.map((it) => it.label)
  const misheard = (site.scenario.control.misheard ?? []).filter((it) => labels.includes(it.message))
  const said = [...labels, ...labels.flatMap((it) => findTurned(it) ?? []), ...misheard.map((it) => it.saidAs)]
  return [...[...new Set(said)].sort(), noNumber]
}

const requireLabel = (site: Site, device: ThingId): string => findSwitch(site, device)?.label ?? ''

/** How control wants the device now: out before the permit, as it was once that is back. */
function wanted(site: Site, device: ThingId): 'open' | 'closed' {
  return site.paper.permit === 'returned' && findSwitch(site, device)?.closed ? 'closed' : 'open'
}

export const hearStep: Action = {
  id: 'hear-step',
  covers: ['A24'],
  speech: true,
  things: switches,
  check: all(switchKnown, (site, order) =>
    site.paper.heard?.switch === thingIn(order) ? refuse(order, 'already-so') : undefined,
  ),
  takes: () => 15,
  apply: (site, order) => {
    const device = thingIn(order)
    const to = wanted(site, device)
    const as = heardAs(site, requireLabel(site, device))
    const says = `control.step-${to}`
    const heard = changePaper(site, { heard: { switch: device, to, as } })
    return perceive(heard, order.who, { of: device, by: 'hear', says, values: { label: as } })
  },
}

export const receiveStep: Action = {
  id: 'receive-step',
  covers: ['A24'],
  speech: true,
  things: switches,
  values: {
    to: { kind: 'choice', many: false, of: () => ['closed', 'open'] },
    readBack: { kind: 'choice', many: false, of: numbersSaid },
  },
  check: switchKnown,
  takes: () => 30,
  apply: (site, order) => {
    const device = thingIn(order)
    const label = requireLabel(site, device)
    const said = choiceIn(order, 'to') === 'open' ? 'open' : 'closed'
    const readBack = choiceIn(order, 'readBack')
    const heard = site.paper.heard?.switch === device ? site.paper.heard : undefined
    const hear = (at: Site, says: string, values = {}): Site =>
      perceive(at, order.who, { of: device, by: 'hear', says, values })
    const told = heard
      ? changePaper(site, { heard: null })
      : hear(site, `control.step-${said}`, { label: heardAs(site, label) })
    const isWrongWay = heard !== undefined && heard.to !== said
    const isRight = !isWrongWay && isTakenAsRight(site, label, readBack)
    const step = { switch: isRight ? deviceNamed(site, readBack, device) : device, to: said, readBack } as const
    const received = changePaper(told, { step })
    const next = findMisheard(site, label) ? mark(received, clearedUp(label)) : received
    if (isRight) return hear(next, 'control.correct', { label, readBack })
    if (readBack === noNumber) return hear(next, 'control.say-number')
    return isWrongWay
      ? hear(next, `control.not-correct-${heard.to}`, { label })
      : hear(next, 'control.not-correct', { label, readBack })
  },
}

/** Whoever was let pass with another number goes by that: the device that has it, if there is one. */
function deviceNamed(site: Site, label: string, asked: ThingId): ThingId {
  return site.scenario.switches.find((it) => it.label === label)?.id ?? asked
}

export const reportStep: Action = {
  id: 'report-step',
  covers: ['A24'],
  speech: true,
  things: switches,
  values: { message: { kind: 'choice', many: false, of: (site) => [...numbersSaid(site)] } },
  check: switchKnown,
  takes: () => 20,
  apply: (site, order) => {
    const device = thingIn(order)
    const said = choiceIn(order, 'message')
    const label = requireLabel(site, device)
    const hear = (at: Site, says: string): Site =>
      perceive(at, order.who, { of: device, by: 'hear', says, values: { label, readBack: said } })
    if (said === noNumber) return hear(site, 'control.which-one')
    return said === label
      ? hear(mark(site, `step-reported:${device}`), 'control.step-noted')
      : hear(site, 'control.not-that-one')
  },
}
