/**
 * People in one stretch of a story, together: each solved body and its layers as they stand then. What failed in an
 * earlier stretch stays failed. A layer between use and proof voltage holds here.
 */
import { isUnsolvable, type Unsolvable } from '../../physics/network'
import type { Scenario } from '../../site/scenario'
import { throughStory, type SolvedBody } from '../bodies/passage'
import type { TouchingBody } from '../bodies/touch'
import type { LinePhase, LineStory } from '../lineStory'

export interface BodyInPhase extends SolvedBody {
  readonly person: string
  /** `item limb` of layers that have failed. */
  readonly failed: ReadonlySet<string>
}

/** In order of the bodies; who closes no circuit is left out. */
export function bodiesInPhase(
  scenario: Scenario,
  line: LineStory,
  last: LinePhase,
  bodies: readonly TouchingBody[],
): readonly BodyInPhase[] | Unsolvable {
  const phases = line.phases.slice(0, line.phases.indexOf(last) + 1)
  const passages = throughStory(scenario, phases, bodies, false)
  if (isUnsolvable(passages)) return passages
  return passages.flatMap(({ states, failed }, b) => {
    const state = states.find((it) => it.phase === last)
    return state === undefined ? [] : [{ ...state, person: bodies[b]!.person, failed }]
  })
}
