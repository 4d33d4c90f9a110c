/** Marks on the drawing something that is taken for a hazard. */
import type { Action } from '../action'
import { tell, write } from '../changes'
import { thingIn } from '../orderValues'
import { refuse } from '../refuse'
import { hazards } from '../things'

export const markHazard: Action = {
  id: 'mark-hazard',
  covers: ['A09'],
  speech: true,
  things: hazards,
  check: (site, order) => (marked(site.written).includes(thingIn(order)) ? refuse(order, 'already-so') : undefined),
  takes: () => 20,
  apply: (site, order) => {
    const hazard = thingIn(order)
    return tell(write(site, 'hazards', [...marked(site.written), hazard].sort()), order, hazard)
  },
}

function marked(written: Readonly<Record<string, string | readonly string[]>>): readonly string[] {
  const { hazards: list } = written
  return typeof list === 'object' ? list : []
}
