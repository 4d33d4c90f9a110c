/**
 * Asks the control room for the jumpers of another pole of the section: another crew, under its own permit and earths, takes
 * them out, or puts them in again. Tails are tied back only when that is said too.
 */
import { findJumpersOut } from '../../site/jumpersOut'
import type { Site } from '../../site/site'
import type { Action } from '../action'
import { mark, perceive } from '../changes'
import { choiceIn, thingIn } from '../orderValues'
import { refuse } from '../refuse'
import { sectionJumpers } from '../things'

/** Seconds for people to come, climb and prove dead; to tie back the tails alone; to hear that nobody can come (common practice, no source). */
const takes = { toComeAndClimb: 1500, toTieBack: 600, toHear: 60 }

const tiedBack = 'jumpers-out-tied-back'

export const askJumpersOut: Action = {
  id: 'ask-jumpers-out',
  covers: ['A34'],
  speech: true,
  things: sectionJumpers,
  values: { message: { kind: 'choice', many: false, of: () => ['jumpers-out', tiedBack] } },
  check: (site, order) => {
    const out = findJumpersOut(site, thingIn(order))
    const isDone = out !== undefined && (out.tails === 'tied-back' || choiceIn(order, 'message') !== tiedBack)
    return isDone ? refuse(order, 'already-so') : undefined
  },
  takes: (site, order) => {
    if (site.scenario.control.takesJumpersOut !== true) return takes.toHear
    return findJumpersOut(site, thingIn(order)) ? takes.toTieBack : takes.toComeAndClimb
  },
  apply: (site, order) => {
    const at = thingIn(order)
    const isGranted = site.scenario.control.takesJumpersOut === true
    const tails = choiceIn(order, 'message') === tiedBack ? 'tied-back' : 'hanging'
    const others = othersOut(site, at)
    const next = isGranted
      ? mark({ ...site, jumpersOut: [...others, { at, tails } as const] }, `jumpers-out:${at}`)
      : site
    const says = isGranted ? `control.jumpers-${tails}` : 'control.jumpers-stay'
    return perceive(next, order.who, { of: at, by: 'hear', says })
  },
}

export const askJumpersIn: Action = {
  id: 'ask-jumpers-in',
  covers: ['A90'],
  speech: true,
  things: sectionJumpers,
  check: (site, order) => (findJumpersOut(site, thingIn(order)) ? undefined : refuse(order, 'already-so')),
  takes: () => takes.toComeAndClimb,
  apply: (site, order) => {
    const at = thingIn(order)
    const next = { ...site, jumpersOut: othersOut(site, at) }
    return perceive(next, order.who, { of: at, by: 'hear', says: 'control.jumpers-on' })
  },
}

function othersOut(site: Site, at: string): NonNullable<Site['jumpersOut']> {
  return (site.jumpersOut ?? []).filter((it) => it.at !== at)
}
