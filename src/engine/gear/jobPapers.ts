/** Register, permit forms and the employer's rules in their folder (row 45). `edition` is printed on the forms. */
import { commonPractice, defect, harmlessMark, labelDefect } from './defect'
import type { GearType } from './gearType'

export const jobPapers: GearType = {
  id: 'job-papers',
  rows: [45],
  passes: commonPractice,
  hands: 0,
  defects: [
    labelDefect('old-edition', { edition: 'withdrawn' }),
    defect('job-papers', 'look', 'page-missing', { complete: false }),
    harmlessMark('job-papers', 'coffee-ring'),
  ],
  parameters: { complete: true },
}
