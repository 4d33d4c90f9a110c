/**
 * Everything that a bare hand can be laid on, by name: `conductor-b`, `arm`, `pole` (1.4 m up), `rod/R-1`, `E-07/2` for
 * an end of a lead, `lv-n`, `stay-lower` … Only what current can reach: a cover or a rope has no name here.
 */
import type { Surface } from '../site/contact'
import { findSectionNeutral } from '../site/findSectionNeutral'
import type { Site } from '../site/site'
import { stayLowerNode, stayUpperNode, armNode, terminalNode } from './circuit/nodes'
import { fittedOnce } from './liven'
import { handHeight } from './touchable'

/** In the order in which a list shows them: wires, pole and its metal, leads and rods, what stands on the ground. */
export function handholds(site: Site): readonly string[] {
  return [...surfaces(site).keys()]
}

export function findHandhold(site: Site, name: string): Surface | undefined {
  return surfaces(site).get(name)
}

function surfaces(site: Site): ReadonlyMap<string, Surface> {
  const { scenario } = site
  const { conductors, lv, metalwork = [], grounds = [], pole, truck } = scenario
  const { leads, rods, truck: parked } = fittedOnce(site)
  const neutral = findSectionNeutral(scenario)
  const metal = [
    armNode,
    ...(pole.kind === 'concrete' && pole.integralEarth ? [terminalNode] : []),
    ...metalwork.map(({ id }) => id),
    stayUpperNode,
    stayLowerNode,
  ]
  return new Map<string, Surface>([
    ...conductors.map(({ id }) => named(id, { kind: 'conductor', id })),
    ...(neutral ? [named(neutral.id, { kind: 'conductor', id: neutral.id })] : []),
    ...lv.wires.map(({ id }) => named(id, { kind: 'lv-wire', id })),
    named('pole', { kind: 'pole', height: handHeight }),
    ...metal.map((id) => named(id, { kind: 'metalwork', id })),
    ...leads.flatMap(({ item, clamps }) => {
      return clamps.map(({ end }) => named(`${item}/${end}`, { kind: 'lead', item, end }))
    }),
    ...rods.map(({ item }) => named(`rod/${item}`, { kind: 'rod', item })),
    ...(truck && parked ? [named('truck', { kind: 'truck' })] : []),
    ...grounds.map(({ id }) => named(id, { kind: 'ground-thing', id })),
  ])
}

const named = (name: string, surface: Surface): readonly [string, Surface] => [name, surface]
