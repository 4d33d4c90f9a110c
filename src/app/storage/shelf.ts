/** The folders on the Depot's shelf: one card for each scenario that came with this build, in order of their ids. */
import type { FolderCard } from './makeCard'

const cards = import.meta.glob<FolderCard>('../../../scenarios/*/scenario.json', {
  query: '?card',
  import: 'default',
  eager: true,
})

export const shelf: readonly FolderCard[] = Object.values(cards).sort((a, b) => (a.id < b.id ? -1 : 1))

export const findCard = (id: string): FolderCard | undefined => shelf.find((it) => it.id === id)
