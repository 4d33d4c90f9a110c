/**
 * Capacitive pick-up from a parallel circuit whose neutral is displaced (procedure D14): one phase at earth, the others
 * at phase-to-phase voltage. The pick-up of its balanced voltages is always there.
 */
import { subtract } from '../../../math/complex'
import { parallelEmfId, requireParallel, voltageOf } from '../parallel'
import type { Mechanism } from './mechanism'

export const pickUp: Mechanism<'pick-up'> = {
  kind: 'pick-up',
  rows: [14],
  links: () => [],
  ownSource: (scenario, livening) => {
    const parallel = requireParallel(scenario, livening.parallel)
    return { id: parallel.id, elements: [], stopsAfter: parallel.faultTime ?? 'never' }
  },
  change: (elements, scenario, livening) => {
    const parallel = requireParallel(scenario, livening.parallel)
    const atEarth = voltageOf(parallel, livening.phase)
    const displaced = new Map(
      parallel.conductors.map(({ phase }) => [
        parallelEmfId(parallel, phase),
        subtract(voltageOf(parallel, phase), atEarth),
      ]),
    )
    return elements.map((it) => {
      const voltage = displaced.get(it.id)
      return it.kind === 'voltage' && voltage !== undefined ? { ...it, voltage } : it
    })
  },
}
