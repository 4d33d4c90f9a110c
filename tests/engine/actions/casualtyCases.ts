/** Somebody was struck and does not answer: rows of refusals.test.ts and applies.test.ts. */
import type { Site } from '../../../src/engine'
import { before, done } from '../../support/cleanStages'
import { withItem } from '../../support/placedItem'
import { changed, person } from '../hazard/sites'
import type { Applied, Refused } from './rows'

const aloft = { kind: 'pole', station: 'above-lv' } as const
const whom = { values: { whom: 'pw' } }
const rescue = { with: 'RK-1', ...whom }
const aid = { with: 'FA-1', ...whom }

/** The pole worker hangs in the strap at the top; the rescue kit and the first-aid kit lie on the tarp. */
export function hanging(...defects: readonly string[]): Site {
  const site = changed(before('untie'), person('gw', { place: aloft, holds: [] }))
  const kit = withItem(site, 'FA-1', 'first-aid-kit', { kind: 'tarp' }, { defects })
  return { ...kit, hurt: ['pw'] }
}

const lying = (...defects: readonly string[]): Site =>
  changed(
    done(hanging(...defects), 'gw', 'bring-down', rescue),
    person('gw', { place: { kind: 'pole', station: 'foot' } }),
  )

export const casualtyRefusals: readonly Refused[] = [
  ['untie', 'hurt', hanging, 'pw', { on: 'conductor-b' }],
  ['bring-down', 'not-hurt', () => ({ ...hanging(), hurt: [] }), 'gw', rescue],
  ['bring-down', 'not-beside', hanging, 'pic', rescue],
  ['bring-down', 'already-so', lying, 'gw', rescue],
  ['first-aid', 'not-on-ground', hanging, 'pic', aid],
  ['first-aid', 'not-beside', lying, 'pic', aid],
]

const at = (site: Site): unknown => site.persons['pw']?.place

export const casualtyCases: readonly Applied[] = [
  [
    'bring-down',
    hanging,
    'gw',
    rescue,
    (s) => [at(s), s.persons['pw']?.strapped],
    [{ kind: 'ground', at: { x: 0, y: 1 } }, false],
  ],
  ['first-aid', lying, 'gw', aid, (s) => s.evidence.at(-1)?.says, 'aid.given'],
  ['first-aid', () => lying('no-green-light'), 'gw', aid, (s) => s.evidence.at(-1)?.says, 'aid.without-shock'],
]
