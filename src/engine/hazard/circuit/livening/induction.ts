/**
 * Mutual induction from a parallel circuit with an earth fault elsewhere (procedure D13): its current, back through the
 * ground, drives every loop of the section that two earths close. The induction of its balanced load is always there.
 */
import { faultDrawn, requireParallel } from '../parallel'
import type { Mechanism } from './mechanism'

export const induction: Mechanism<'induction'> = {
  kind: 'induction',
  rows: [13],
  links: () => [],
  ownSource: (scenario, livening) => {
    const parallel = requireParallel(scenario, livening.parallel)
    return {
      id: parallel.id,
      elements: [faultDrawn(parallel, livening.phase)],
      stopsAfter: parallel.faultTime ?? 'never',
    }
  },
}
