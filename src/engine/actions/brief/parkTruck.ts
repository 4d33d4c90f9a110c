/** Parks and chocks the truck. */
import type { Action } from '../action'
import { changePerson, mark, tell } from '../changes'
import { onSite } from '../conditions'
import { pointIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { isTruckPlaceTaken } from '../../site/takenGround'

export const parkTruck: Action = {
  id: 'park-truck',
  covers: ['A05', 'A44'],
  values: { at: { kind: 'point' } },
  moves: true,
  check: all(onSite, (site, order) => {
    if (site.truckState?.outriggers === 'down') return refuse(order, 'outriggers-down')
    const lead = site.clamps.find((it) => it.on === 'truck')
    if (lead) return refuse(order, 'lead-still-on', { item: lead.lead })
    return isTruckPlaceTaken(site, pointIn(order, 'at')) ? refuse(order, 'ground-taken') : undefined
  }),
  takes: () => 120,
  apply: (site, order) => {
    const at = pointIn(order, 'at')
    const parked = { ...mark(site, 'truck-parked'), truck: at }
    return tell(changePerson(parked, order.who, { place: { kind: 'ground', at } }), order, 'truck', {
      x: at.x,
      y: at.y,
    })
  },
}
