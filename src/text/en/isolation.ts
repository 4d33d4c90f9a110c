/** Words of isolating and of talk: with the control room, on low voltage, from person to person. Never a verdict. */
import type { Words } from '../words'

const names = {
  'action.ask-crossing-guard': 'Ask for a guard at the crossing',
  'action.ask-feeder-in': 'Say it may go in again',
  'action.ask-how-it-stands': 'Ask how it stands',
  'action.ask-owner': 'Ask the owner',
  'action.bag-carriers': 'Bag the fuse carriers',
  'action.bond-lv': 'Put low-voltage bond on wire',
  'action.check-handle-earth': 'Follow the handle’s earth lead',
  'action.hear-permit': 'Have the permit read out',
  'action.hear-step': 'Ask for the switching step',
  'action.motor-supply-off': 'Switch the drive’s supply off',
  'action.motor-supply-on': 'Switch the drive’s supply on',
  'action.report-step': 'Report the step done',
  'action.search-premises': 'Look and listen about the place',
  'action.unbag-carriers': 'Take the bag off the fuse carriers',
  'action.unbond-lv': 'Take low-voltage bond off wire',
  'action.write-tag': 'Write on the tag',
} as const satisfies Words

const done = {
  'did.bag-carriers': '{of:thing}: fuse carriers in bag {item:item}, locked',
  'did.bond-lv': 'Low-voltage bond {lead:item}, tail {end}, on {of:thing}; {turns:turns}',
  'did.motor-supply-off': '{of:thing}: supply of the drive off',
  'did.motor-supply-on': '{of:thing}: supply of the drive on',
  'did.unbag-carriers': '{of:thing}: bag off the fuse carriers',
  'did.unbond-lv': 'Low-voltage bond {lead:item} off {of:thing}',
  'did.write-tag': '{of:item} written: {wording:choice}',
} as const satisfies Words

/** What the control room says. */
const control = {
  'control.crossing-guarded': 'Control room: “a guard stands between you and {feeder:thing}”',
  'control.feeder-in': 'Control room: “{feeder:thing} is back in service”',
  'control.nobody-to-guard': 'Control room: “nobody to send for a guard today”',
  'control.not-correct-closed': 'Control room: “not correct; I said close {label}”',
  'control.not-correct-open': 'Control room: “not correct; I said open {label}”',
  'control.not-that-one': 'Control room: “not {readBack}; I gave you {label}”',
  'control.permit-ends': '{limits} until {until:time},',
  'control.permit-not-correct': 'Control room: “not correct; I said {label:permit} you said {readBack:permit}”',
  'control.permit-number': 'number {number}, {limits}',
  'control.permit-points': 'pole {number}, isolated at {points},',
  'control.permit-read': 'Control room: “permit for {readBack:permit} say it back”',
  'control.say-number': 'Control room: “say the number back”',
  'control.stands': 'Control room: “{feeder:thing} is {state:choice} and {reclose:choice}”',
  'control.step-noted': 'Control room: “{label} done, noted”',
  'control.which-one': 'Control room: “which one? Say the number”',
} as const satisfies Words

/** What is seen, read, felt and heard on site. */
const perceived = {
  'owner.consents': '{of:thing}: “the main switch is over there, go ahead”',
  'owner.does-not-know': '{of:thing}: “a set of our own? I could not say”',
  'owner.has-none': '{of:thing}: “no, we have nothing of our own”',
  'owner.has-own': '{of:thing}: “yes, we have one of our own”',
  'owner.nobody-home': '{of:thing}: nobody answers',
  'owner.nothing-seen': '{of:thing}: no cable, panel or exhaust to be seen',
  'owner.quiet': '{of:thing}: nothing to be heard',
  'owner.refuses': '{of:thing}: “I will not have anybody at my switch”',
  'owner.seen-generator': '{of:thing}: an exhaust and a cable to the switchboard',
  'owner.seen-inverter': '{of:thing}: panels, and a cable to the switchboard',
  'owner.seen-tie': '{of:thing}: a second cable comes to the switchboard',
  'owner.set-runs': '{of:thing}: a set is running',
  'see.handle-earth-broken': 'The handle’s earth lead is broken off above the ground',
  'see.handle-earth-whole': 'The handle’s earth lead goes whole into the ground',
} as const satisfies Words

const choices = {
  'choice.does-not-reclose': 'does not reclose',
  'choice.in-service': 'in service',
  'choice.name-and-time': 'Name and time',
  'choice.name-only': 'Name only',
  'choice.out-of-service': 'out of service',
  'choice.permit-name-and-time': 'Permit, name and time',
  'choice.recloses': 'recloses',
  'choice.understood': 'Understood',
  'value.wording': 'Written on it',
  /** How a choice is shown that is a string of numbers. */
  'choiceAs.take-permit.readBack': '{choice:permit}',
} as const satisfies Words

export const isolation = { ...names, ...done, ...control, ...perceived, ...choices } as const
