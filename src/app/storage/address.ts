/**
 * In *practise* the address carries scenario, seed and purpose, so that a link opens the same thing. In *assess* only the
 * scenario: the seed is the assessor's.
 */
export interface Address {
  readonly scenario?: string
  readonly seed?: number
  readonly purpose?: 'practise' | 'assess'
  readonly place?: string
}

export function readAddress(hash: string): Address {
  const parts = new URLSearchParams(hash.replace(/^#/, ''))
  const [scenario, seed, purpose, place] = ['scenario', 'seed', 'purpose', 'place'].map((name) => parts.get(name))
  return {
    ...(scenario ? { scenario } : {}),
    ...(seed && /^\d{1,9}$/.test(seed) ? { seed: Number(seed) } : {}),
    ...(purpose === 'practise' || purpose === 'assess' ? { purpose } : {}),
    ...(place ? { place } : {}),
  }
}

interface Head {
  readonly scenario: string
  readonly seed: number
  readonly purpose: 'practise' | 'assess'
}

export function writeAddress(head: Head | null, place: string): void {
  const parts = new URLSearchParams()
  if (head) {
    parts.set('scenario', head.scenario)
    if (head.purpose === 'practise') parts.set('seed', String(head.seed))
    parts.set('purpose', head.purpose)
    parts.set('place', place)
  }
  // It belongs to no job.
  if (place === 'office') parts.set('place', place)
  const hash = parts.toString()
  history.replaceState(null, '', `${location.pathname}${location.search}${hash && `#${hash}`}`)
}
