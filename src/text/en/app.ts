/** Words of the sheets and their buttons. Sentence case, few and exact. */
import type { Words } from '../words'

export const app = {
  'app.name': 'Earths On',
  'app.places': 'Places',
  'app.depot': 'Depot',
  'app.job-sheet': 'Job sheet',
  'app.gear': 'Gear',
  'app.site': 'Site',
  'app.debrief': 'Debrief',
  'app.settings': 'Settings',
  'app.caution': 'Training aid, not a work instruction. Your employer’s rules decide.',
  'app.caution.full':
    'This is a training aid. It is not a work instruction. Your employer’s rules, local codes and licensed practice decide. A pass here is not a field authorisation.',
} as const satisfies Words
