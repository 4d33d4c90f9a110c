/** Going on to the next pole: the recorded run with a next pole to go to. */
import type { Scenario } from '../../../../src/engine'
import { add, all } from '../../../support/rules/edits'
import type { RuleCases } from '../../../support/rules/ruleCase'

/** 60 m further on, control room willing. */
const withNextPole = (scenario: Scenario): Scenario => ({
  ...scenario,
  nextPole: { number: 'P118', along: 60 },
  control: { ...scenario.control, widensPermit: true },
})

const goThere = (anchor: string) => add({ who: 'pic', do: 'walk', values: { to: { x: 56, y: 4 } } }, anchor)
const assess = (anchor: string) =>
  all(add({ who: 'pic', do: 'assess-next-pole', on: 'next-pole' }, anchor), goThere('pic assess-next-pole'))
const askWider = add({ who: 'pic', do: 'ask-wider-permit', on: 'next-pole' }, 'pic look pole-top')
/** The pole worker's first step up there, before the permit goes back. */
const climb = all(
  add({ who: 'pw', do: 'climb', values: { to: 'below-lv' } }, 'pic return-permit'),
  add({ who: 'pw', do: 'walk', on: 'next-pole' }, 'pw climb below-lv #3'),
)

export const nextPole: RuleCases = {
  'next-pole-permitted': {
    breaks: { edit: climb, place: withNextPole },
    near: { edit: all(askWider, climb), place: withNextPole },
  },
  'next-pole-assessed': {
    breaks: { edit: all(askWider, climb), place: withNextPole },
    near: { edit: all(askWider, climb, assess('pic head-count')), place: withNextPole },
  },
  'first-pole-cleared': {
    breaks: { edit: assess('pic confirm-complete'), place: withNextPole },
    near: { edit: assess('pic head-count'), place: withNextPole },
  },
  'next-pole-looked-up': {
    breaks: { edit: assess('pic look pole-top'), place: withNextPole },
    near: { edit: assess('pic head-count'), place: withNextPole },
  },
}
