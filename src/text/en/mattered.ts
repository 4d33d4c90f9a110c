/** Words for what each thing did at the worst instant, and how sure that is. */
import type { Words } from '../words'

export const mattered = {
  'mattered.title': 'How much each thing mattered',
  'mattered.who': 'For whom',
  'mattered.when': 'Worst at {time}. {what}. {who}.',
  'mattered.between': '{none} with nothing of it, {all} as it was.',
  'mattered.betweenIn': '{none} with nothing of it, {all} as it was; {corner}.',
  'mattered.fails': 'Layers above their use voltage counted as failed.',
  'mattered.thing': 'Thing',
  'mattered.bar': 'Its part',
  'mattered.took': 'Took off',
  'mattered.added': 'added {value}',
  'mattered.nothing': 'Made no difference here: {things}.',
  'mattered.undivided': 'On in every case counted: {things}.',
  'mattered.how':
    'Worked out with every combination of these things on and off. Each gets what it takes off, averaged over every order of fitting. For this person, this moment and this livening alone: another shares it out otherwise.',
  'mattered.none': 'No moment of the run would have put anything on anybody.',
  'mattered.noneHere': 'Nothing reaches anybody at this instant.',
  'mattered.working': 'Being worked out',
  'mattered.unsolved': 'It has no answer: {reason} at {node}.',
  'chance.title': 'How sure it is',
  'chance.working': 'Draw {done} of {total}',
  'chance.judged':
    '{low} to {high} in nine draws of ten, half below {middle}. Drawn: what the scenario gives as a range, and the body.',
  'chance.above': 'Above the limit in {count} of {of} draws: {share} ({low} to {high}).',
  'chance.fails': 'With layers above their use voltage failing: {share} ({low} to {high}).',
  'chance.heart': 'Chance that the heart stops pumping: {likely} ({low} to {high}).',
  'chance.beyond': 'The time lies outside the published curves; the nearest point is used.',
  'chance.unsolved': '{count} draws could not be solved and are left out.',
  'chance.note': 'The verdict comes from the corners, not from this.',
  'corner.contact-low': 'contacts small',
  'corner.contact-high': 'contacts wide',
  'corner.moisture-low': 'layers wet',
  'corner.moisture-high': 'layers dry',
  'fitted.rod': 'Rod {item}',
  'fitted.isolation-earth': 'Earth at the switch {item}',
} as const satisfies Words
