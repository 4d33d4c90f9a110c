import { actions, startSite, type Action } from '../../src/engine'
import { marrowBend } from './marrowBend'

/** Paragraphs of the procedure that the site of Marrow Bend has no act for, with the reason. */
export const notOfThisSite: Readonly<Record<string, string>> = {
  A31: 'No distribution transformer stands in the section: there are no fuse carriers to take out.',
  A32: 'No low-voltage side and no customer’s generator feeds the section; the low voltage on the pole stays in service and guarded.',
  A33: 'No street-light wire, pilot or telecom feed is on the pole.',
  A48: 'The low voltage stays in service: it is kept treated as live and guarded, so no bonds go on it.',
  A71: 'No conductor, jumper or neutral is cut or opened: the insulator is changed with the conductor tied aside.',
  A75: 'One shift and one person in charge: nobody hands over.',
  A76: 'The work stays on one pole: extending it would be a second permit and a second set.',
}

export const paragraphs: readonly string[] = Array.from({ length: 91 }, (_, i) => `A${String(i + 1).padStart(2, '0')}`)

const site = startSite(marrowBend())

/** Something is there that it can be done on. */
const isOfThisSite = (action: Action): boolean => action.things === undefined || action.things(site).length > 0

export function actionsFor(paragraph: string): readonly string[] {
  return [...actions.values()]
    .filter((action) => action.covers.includes(paragraph) && isOfThisSite(action))
    .map((action) => action.id)
}

/** The table that lies beside the scenario: paragraph, then the acts that carry it or why there is none. */
export function coverageTable(): string {
  const lines = paragraphs.map((it) => `| ${it} | ${actionsFor(it).join(', ')} | ${notOfThisSite[it] ?? ''} |`)
  const head = [
    '# What carries each paragraph of the job',
    '',
    'Written by `npm run record`.',
    '',
    '| paragraph | acts | why none |',
    '|---|---|---|',
  ]
  return [...head, ...lines, ''].join('\n')
}
