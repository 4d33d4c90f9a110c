/** How an action says that it cannot be, and how conditions are put together. */
import type { Site } from '../site/site'
import type { Order, Refusal } from './action'

/** What can stand in the way. One sentence each in src/text/en/refusals.ts, whichever action met it. */
export const facts = [
  'already-signed-on',
  'already-so',
  'away',
  'barrier-too-short',
  'boom-too-short',
  'boot-size',
  'bucket-down',
  'bucket-full',
  'bucket-up',
  'busy',
  'by-name-or-place',
  'cabinet-shut',
  'cannot-be-tested',
  'carriers-bagged',
  'carriers-in',
  'controls-dead',
  'cover-too-short',
  'driver-missing',
  'end-free-none',
  'ground-taken',
  'handle-locked',
  'handline-missing',
  'hands-full',
  'harness-missing',
  'has-no-remote',
  'held-by-another',
  'hurt',
  'in-bucket',
  'in-the-way',
  'insulator-tied',
  'interrupted',
  'irons-missing',
  'job-closed',
  'key-does-not-turn',
  'key-not-here',
  'lead-not-aloft',
  'lead-still-on',
  'lead-too-short',
  'lock-fitted',
  'mat-missing',
  'no-consent',
  'no-insulator',
  'no-permit',
  'no-way-up',
  'nobody-below',
  'not-a-choice',
  'not-a-value',
  'not-at-hand',
  'not-at-rod',
  'not-at-switch',
  'not-at-truck',
  'not-beside',
  'not-bonded-there',
  'not-booked-out',
  'not-clamped-there',
  'not-fitted-there',
  'not-here-yet',
  'not-hurt',
  'not-in-bucket',
  'not-in-charge',
  'not-in-sight',
  'not-left-there',
  'not-near-pole',
  'not-on-ground',
  'not-open',
  'not-on-pole',
  'not-stopped',
  'not-tied-on',
  'not-together',
  'not-worn',
  'nothing-to-tighten',
  'out-of-hearing',
  'out-of-reach',
  'outriggers-down',
  'outriggers-up',
  'quarantined',
  'rod-too-short',
  'same-wire',
  'stick-missing',
  'strapped',
  'taken-already',
  'thing-missing',
  'too-dark',
  'too-late',
  'unknown-action',
  'unknown-item',
  'unknown-person',
  'under-another',
  'unknown-thing',
  'value-missing',
  'wires-untied',
] as const

export type Fact = (typeof facts)[number]

export type Condition = (site: Site, order: Order) => Refusal | undefined

export function refuse(order: Order, fact: Fact, values: Refusal['values'] = {}): Refusal {
  return { code: `${order.do}/${fact}`, values }
}

/** The first condition that does not hold speaks. */
export function all(...conditions: readonly Condition[]): Condition {
  return (site, order) => {
    for (const condition of conditions) {
      const refusal = condition(site, order)
      if (refusal) return refusal
    }
    return undefined
  }
}

/** Nothing in the world stands in its way. */
export const always: Condition = () => undefined
