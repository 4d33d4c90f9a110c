/** Leads that no clamp holds but several people do, as cable with its stray capacitance to earth. */
import { complex } from '../../math/complex'
import { REMOTE_EARTH, type Element } from '../../physics/network'
import type { Site } from '../../site/site'
import { fittedLead } from '../circuit/fitted'
import { angularFrequency } from '../circuit/parts'
import { cables, freshLeads, looseCapacitance } from '../circuit/leads'
import { leadNode, personNode } from '../circuit/nodes'
import type { BodyInPhase } from './bodyInPhase'

export function looseLeads(site: Site, frequency: number, bodies: readonly BodyInPhase[]): readonly Element[] {
  const terminals = bodies.flatMap(({ ports }) => ports.ported.map((it) => it.terminal))
  const items = [...new Set(terminals.flatMap((it) => (it.kind === 'loose' ? [it.lead] : [])))].sort()
  const stray = (item: string, from: string): Element => ({
    id: `stray/${item}`,
    kind: 'admittance',
    from,
    to: REMOTE_EARTH,
    admittance: complex(0, angularFrequency(frequency) * looseCapacitance),
  })
  return items.flatMap((item): readonly Element[] => {
    // skin that another person has a hand on is its own node
    if (Object.keys(site.persons).some((id) => personNode(id) === item)) return [stray(item, item)]
    const lead = fittedLead(site, item)
    return [...cables(frequency, lead, freshLeads), stray(item, leadNode(item, lead.pieces[0]!.from))]
  })
}
