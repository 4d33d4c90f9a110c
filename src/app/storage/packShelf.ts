/** The rule packs that came with this build, by name and with their caution, in order of their ids. */
export interface PackCard {
  readonly id: string
  readonly name: string
  /** What stands first wherever its rules are shown. */
  readonly caution: string
}

const cards = import.meta.glob<PackCard>('../../../scenarios/packs/*/pack.json', {
  query: '?card',
  import: 'default',
  eager: true,
})

export const packShelf: readonly PackCard[] = Object.values(cards).sort((a, b) => (a.id < b.id ? -1 : 1))

export const cautionOf = (pack: string): string => packShelf.find(({ id }) => id === pack)?.caution ?? ''
