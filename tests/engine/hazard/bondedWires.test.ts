/**
 * Bonds across the wires of an isolated low voltage against a source of somebody's own that comes on there. By hand: a
 * source that gives at most so many amperes into so many ohms (Ohm); copper 17.241e-9 Ω·m at 20 °C (IEC 60028). That bonds
 * are put on all wires is common practice, no source.
 */
import { describe, expect, it } from 'vitest'
import { findRemovedCause } from '../../../src/engine/site/liveningTraits'
import { liveVoltage } from '../../../src/engine/site/liveness'
import type { Livening } from '../../../src/engine/site/livening'
import type { Site } from '../../../src/engine/site/site'
import { isStanding } from '../../../src/engine/hazard/liven'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import { solveInstant } from '../../../src/engine/hazard/instant'
import { withCabinets } from '../actions/isolationCases'
import { withItem } from '../../support/placedItem'
import { backFed } from './backFeedSites'
import {
  bladesClosed,
  changed,
  clampOn,
  exposureOf,
  isolatedSite,
  momentOf,
  person,
  sharedCache,
  storyOf,
  touching,
} from './sites'

const comesOn: Livening = { id: 'panels', kind: 'low-voltage-fed', source: 'set-1' }
/** 10 kVA on three phases of 230 V: 14.5 A, at most 1.2 of it. */
const most = (1.2 * 10_000) / (3 * 230)
const panels = backFed({
  transformer: { neutralEarth: { resistance: 5 } },
  source: { kind: 'inverter', rating: 10_000, limit: 1.2, trips: 'never' },
  lv: { fedBy: 't1' },
  livenings: [comesOn],
})
const wires = ['lv-a', 'lv-b', 'lv-c', 'lv-n']
const ends = ['1', '2', '3', 'n']

/** The transformer's carriers out and its switch open: only the wires are behind the panels. */
const cutOff = (site: Site): Site => ({
  ...site,
  carriers: { t1: 'out' },
  mains: { ...site.mains, t1: { position: 'open', lock: 'K-71', lockedBy: 'so' } },
})
const bare = (): Site => changed(isolatedSite(panels), cutOff)
const bonded = (...on: readonly string[]): Site =>
  changed(
    withItem(bare(), 'LB-1', 'lv-bond-set', { kind: 'fitted' }),
    ...wires.flatMap((wire, i) => (on.includes(wire) ? [clampOn('LB-1', ends[i]!, wire)] : [])),
  )
const worker = person('pw', { place: { kind: 'pole', station: 'below-lv' }, wears: ['BT-42'] })
const hands = [
  touching('pw', 'left-hand', { kind: 'lv-wire', id: 'lv-b' }),
  touching('pw', 'right-hand', { kind: 'lv-wire', id: 'lv-n' }),
]

function volts(site: Site, node: string): number {
  const answer = solveInstant(momentOf(site), 'panels', declaredCorner, { cache: sharedCache })
  if (answer.kind !== 'instant') throw new Error(answer.reason)
  return answer.nodes.find((it) => it.node === node)!.size
}
const acrossHands = (site: Site) => exposureOf(storyOf(momentOf(changed(site, worker), ...hands), 'panels'), 'pw')

describe('panels that come on behind the transformer of the wires', () => {
  it('an inverter alone on the wires holds them at 230 V', () => {
    // unloaded behind 1 + j10 %: nothing to drop it
    for (const wire of wires.slice(0, 3)) expect(volts(bare(), wire) / 230).toBeCloseTo(1, 2)
    expect(acrossHands(bare())?.prospectiveVoltage).toBeGreaterThan(200)
    expect(acrossHands(bare())?.bodyCurrent).toBeGreaterThan(0.1)
  })

  it('bonds on all four wires pull it down to its limit through a wire’s ohms: below a volt at the hands', () => {
    const all = bonded(...wires)
    // a tail of 0.6 m, 25 mm²: 0.41 mΩ and twice 0.5 mΩ of clamps; 17.4 A through that is 25 mV
    const tail = (17.241e-9 * 0.6) / 25e-6 + 1e-3
    expect(volts(all, 'lv-b')).toBeLessThan(2 * most * tail + 0.05)
    expect(acrossHands(all)?.bodyCurrent ?? 0).toBeLessThan(0.5e-3)
    expect(liveVoltage(all, 'lv-b')).toBe(0)
  })

  it('a wire that was left out stays up beside the bonded ones', () => {
    const left = bonded('lv-a', 'lv-c', 'lv-n')
    // the limit lowers all phases alike: what is left of them is on the one without a bond
    expect(acrossHands(left)?.prospectiveVoltage ?? 0).toBeGreaterThan(
      20 * (acrossHands(bonded(...wires))?.prospectiveVoltage ?? 0),
    )
  })

  it('only its owner’s locked switch takes the cause away: carriers and the transformer’s switch do not', () => {
    expect(findRemovedCause(bare(), comesOn)).toBeUndefined()
    const locked = {
      ...bare(),
      mains: { ...bare().mains, 'set-1': { position: 'open', lock: 'K-72', lockedBy: 'so' } as const },
    }
    expect(findRemovedCause(locked, comesOn)).toBe('source-locked')
  })
})

describe('panels beside a line that is fed', () => {
  it('run with it and live nothing by themselves, until carriers or switch cut the wires off', () => {
    const fed = changed(isolatedSite(panels), bladesClosed('switch-27', 'A', 'B', 'C'))
    expect(isStanding(fed, comesOn)).toBe(false)
    expect(isStanding(cutOff(fed), comesOn)).toBe(true)
    expect(isStanding(bare(), comesOn)).toBe(true)
  })
})

describe('carriers that hang in their cut-outs', () => {
  const back: Livening = { id: 'set-on', kind: 'back-feed', source: 'set-1' }
  const hung = (): Site => ({ ...isolatedSite(backFed()), carriers: { t1: 'hung' } })
  const withBag = (defects: readonly string[]): Site => ({
    ...withItem(hung(), 'CB-1', 'carrier-bag', { kind: 'fitted' }, { defects }),
    carrierBags: { t1: { item: 'CB-1', by: 'so' } },
  })

  it('can be pushed home by anybody; not through a bag that closes, but through one with no lock', () => {
    expect(findRemovedCause(hung(), back)).toBeUndefined()
    expect(findRemovedCause(withBag([]), back)).toBe('carriers-bagged')
    expect(findRemovedCause(withBag(['lock-missing']), back)).toBeUndefined()
  })
})

describe('a feed with a switch of its own', () => {
  it('is alive until that is open, and then hangs on its insulator alone', () => {
    const fed = isolatedSite(withCabinets)
    const off: Site = { ...fed, mains: { ...fed.mains, 'lv-t': { position: 'open', lock: null, lockedBy: null } } }
    expect(liveVoltage(fed, 'lv-t')).toBe(230)
    expect(liveVoltage(off, 'lv-t')).toBe(0)
    const hand = touching('pw', 'left-hand', { kind: 'lv-wire', id: 'lv-t' })
    const current = (site: Site): number => {
      const moment = momentOf(changed(site, worker), hand, hands[1]!)
      return storyOf(moment, 'none').exposures.find((it) => it.person === 'pw')?.bodyCurrent ?? 0
    }
    expect(current(fed)).toBeGreaterThan(0.1)
    expect(current(off)).toBeLessThan(1e-6)
  })
})
