/** Words of the person in charge that open and end the work. */
import type { Paper } from '../../site/site'
import type { Action } from '../action'
import { changePaper, tell } from '../changes'
import { refuse } from '../refuse'

type Gate = 'safeToWork' | 'workDone' | 'stopped'

function declare(id: string, gate: Gate, covers: readonly string[], takes: number): Action {
  return {
    id,
    covers,
    speech: true,
    check: (site, order) => (site.paper[gate] ? refuse(order, 'already-so') : undefined),
    takes: () => takes,
    apply: (site, order) => tell(changePaper(site, { [gate]: true } satisfies Partial<Paper>), order, 'order'),
  }
}

export const declareSafe = declare('declare-safe', 'safeToWork', ['A69'], 10)
export const confirmComplete = declare('confirm-complete', 'workDone', ['A78'], 20)
export const stopJob = declare('stop-job', 'stopped', ['A77'], 10)
