/** Words for what each thing did at the worst instant, and how sure that is. */
import type { Words } from '../words'

export const mattered = {
  'mattered.title': 'How much each thing mattered',
  'mattered.who': 'For whom',
  'mattered.happened': 'What came alive at {time}. {what}. {who}.',
  'mattered.when': 'Worst at {time}. {what}. {who}.',
  'mattered.between': '{none} with none of these on, {all} as it was.',
  'mattered.betweenIn': '{none} with none of these on, {all} as it was; {corner}.',
  'mattered.fails': 'Insulation above its rated voltage counted as failed.',
  'mattered.thing': 'Thing',
  'mattered.bar': 'How much',
  'mattered.took': 'Took off',
  'mattered.added': 'added {value}',
  'mattered.ties':
    'It ties the conductors together: what livens one is on all of them. The bare path is what let it through.',
  'mattered.nothing': 'Made no difference here: {things}.',
  'mattered.undivided': 'Left on in every case: {things}.',
  'mattered.how':
    'Worked out with these things on and off in every combination, and averaged over every order of fitting. It holds for this person, this moment and this event alone.',
  'mattered.none': 'No moment of the run would have put anything on anybody.',
  'mattered.noneHere': 'Nothing reaches anybody at this instant.',
  'mattered.working': 'Being worked out',
  'mattered.unsolved': 'It could not be worked out: {reason} at {node}.',
  'chance.title': 'How sure it is',
  'chance.working': 'Draw {done} of {total}',
  'chance.judged':
    'Drawn with soil, contacts and body anywhere in their range: {low} to {high} in nine draws of ten, half of them below {middle}.',
  'chance.above': 'Above the limit in {count} of {of} draws: {share}. From so many draws it can be {low} to {high}.',
  'chance.fails': 'If insulation above its rated voltage fails: {share}. From so many draws it can be {low} to {high}.',
  'chance.heart': 'Chance of fibrillation: {likely}; {low} to {high} in nine draws of ten.',
  'chance.heartOne': 'Chance of fibrillation: {likely}.',
  'chance.beyond': 'The time lies beyond the published curves; their end is used.',
  'chance.unsolved': '{count draw|draws} could not be worked out; left out.',
  'chance.note': 'The grade does not use this: it goes by the settings of soil and contacts above.',
  'corner.contact-low': 'small contacts',
  'corner.contact-high': 'wide contacts',
  'corner.moisture-low': 'wet layers',
  'corner.moisture-high': 'dry layers',
  'fitted.rod': 'Rod {item}',
  'fitted.isolation-earth': 'Earth at the switch {item}',
} as const satisfies Words
