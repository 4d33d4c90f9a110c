/** What people, items, things of the place and phases are called; each file of the scenario builds on these. */

export type PersonId = string
export type ItemId = string
export type ThingId = string
export type Phase = 'A' | 'B' | 'C'
export const phases: readonly Phase[] = ['A', 'B', 'C']
