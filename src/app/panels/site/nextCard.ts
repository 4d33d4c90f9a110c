/** Next on my plan: selects person, thing and item of the next card; the act itself is still made. */
import { requirePack } from '../../storage/library'
import { jobStore } from '../../stores/jobStore'
import { chooseThing, choosePersons, viewStore } from '../../stores/viewStore'
import { focusTree } from './focus'

/** A card is `who:do:with:on` as written on the Job sheet; parts may be empty. */
export function nextCard(): void {
  const { belief, head } = jobStore.getState()
  // A pack may take the plan away in a scored run.
  if (head?.purpose === 'assess' && !requirePack(head.pack).planOnSite) return
  const cards = belief?.written.plan
  if (!belief || typeof cards !== 'object') return
  const { card } = viewStore.getState()
  const [act = '', item = '', on = ''] = (cards[card % Math.max(1, cards.length)] ?? '').split(':')
  void act
  const holder = belief.persons.find((person) => person.holds.includes(item))
  if (holder) choosePersons([holder.id])
  chooseThing(on || item || null)
  viewStore.setState({ card: card + 1 })
  focusTree()
}
