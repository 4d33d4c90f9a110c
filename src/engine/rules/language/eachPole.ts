/**
 * The work at each pole by itself. A run is cut where the crew goes on to the next pole: it looks it over, climbs it or
 * does anything to a thing up there, whichever is first.
 */
import { isOnNextPole } from '../../site/nextPole'
import { requirePerson } from '../../site/questions'
import type { Entry } from '../../timeline/timeline'
import { viewBetween, type RunView } from './runView'

/** @returns the run as it is where the crew stayed at one pole */
export function viewEachPole(view: RunView): readonly RunView[] {
  const moved = view.timeline.scenario.nextPole === undefined ? undefined : view.begun.find(isAtNextPole)
  if (moved === undefined) return [view]
  return [viewBetween(view, -Infinity, moved.start), viewBetween(view, moved.start, Infinity)]
}

function isAtNextPole({ order, outcome, after }: Entry): boolean {
  if (order.do === 'assess-next-pole' || isOnNextPole(order.on ?? '')) return true
  if (order.do !== 'climb' || outcome !== 'done') return false
  const { place } = requirePerson(after, order.who)
  return place.kind === 'pole' && place.pole === 'next'
}
