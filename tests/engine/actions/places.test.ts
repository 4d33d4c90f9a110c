/**
 * Gear stays where it is put, people reach only what is beside them, one switching step is good for one device and one
 * time. What belongs where is common practice, no source.
 */
import { describe, expect, test } from 'vitest'
import { actions, bodiesAt, checkOrder, type Order, type Site } from '../../../src/engine'
import { after, before, done, refused } from '../../support/cleanStages'

const seconds = (site: Site, who: string, act: string, said: Partial<Order> = {}): number => {
  const order: Order = { at: site.time, who, do: act, values: {}, ...said }
  expect(checkOrder(site, order)).toBeUndefined()
  return actions.get(act)!.takes(site, order)
}
const soleLayers = (site: Site): readonly string[] =>
  bodiesAt(site)
    .find((it) => it.person === 'so')!
    .contacts.flatMap((it) => it.through)

describe('at a far switch', () => {
  const onMat = (): Site => after('step-on-mat')

  test('whoever walks off the mat leaves it there, and it insulates nobody at the next switch', () => {
    expect(soleLayers(onMat())).toContain('M-1')
    const there = done(onMat(), 'so', 'walk', { on: 'switch-31' })
    expect(there.persons['so']?.onMat).toBe(false)
    expect(there.items['M-1']?.where).toEqual({ kind: 'left', at: 'switch-27' })
    expect(soleLayers(there)).toEqual([])
    expect(refused(there, 'so', 'step-on-mat')).toBe('step-on-mat/mat-missing')
    const back = done(done(there, 'so', 'walk', { on: 'switch-27' }), 'so', 'step-on-mat')
    expect(soleLayers(back)).toContain('M-1')
  })

  test('what is taken off or put down there is not at the truck', () => {
    const off = done(onMat(), 'so', 'take-off', { on: 'G-31' })
    expect(off.items['G-31']?.where).toEqual({ kind: 'person', person: 'so' })
    const down = done(off, 'so', 'put-down', { on: 'G-31' })
    expect(down.items['G-31']?.where).toEqual({ kind: 'left', at: 'switch-27' })
    expect(refused(down, 'gw', 'take', { on: 'G-31' })).toBe('take/not-at-hand')
    expect(refused(down, 'gw', 'book-in', { on: 'G-31' })).toBe('book-in/not-at-hand')
    expect(refused(down, 'so', 'take', { on: 'G-31' })).toBeUndefined()
  })

  test('nobody there judges or books what lies on the tarp', () => {
    expect(refused(onMat(), 'so', 'judge', { on: 'E-07', values: { verdict: 'pass' } })).toBe('judge/not-near-pole')
    expect(refused(onMat(), 'so', 'book-out', { on: 'E-08' })).toBe('book-out/not-near-pole')
  })
})

describe('a switching step', () => {
  const step = (site: Site): unknown => site.paper.step
  const received = (to: string): Site => {
    const readBack = { to, readBack: '27' }
    return done(before('open-switch'), 'so', 'receive-step', { on: 'switch-27', values: readBack })
  }

  test('is used up by working the handle, whichever way', () => {
    expect(step(received('closed'))).toEqual({ switch: 'switch-27', to: 'closed', readBack: '27' })
    expect(step(done(received('closed'), 'so', 'open-switch', { on: 'switch-27' }))).toBeNull()
    expect(step(done(received('open'), 'so', 'open-switch', { on: 'switch-27' }))).toBeNull()
  })

  test('is used up when a switch that stood open is locked and tagged, and by the report', () => {
    expect(step(after('lock', { on: 'switch-31' }))).toEqual({ switch: 'switch-31', to: 'open', readBack: '31' })
    expect(step(after('tag', { on: 'switch-31' }))).toBeNull()
    expect(step(done(received('open'), 'so', 'report-isolated'))).toBeNull()
  })

  test('on handing back one is received at each device before it is touched', () => {
    expect(step(before('untag', { on: 'switch-31' }))).toMatchObject({ switch: 'switch-31' })
    expect(step(before('untag', { on: 'switch-27' }))).toMatchObject({ switch: 'switch-27', to: 'closed' })
    expect(step(after('set-remote'))).toBeNull()
  })
})

describe('the handline', () => {
  test('what comes down is carried to the tarp by whoever stands below: 40 s and the way, 1.2 m/s', () => {
    // From (−2.6, 2) to the truck at (−14, 10): sqrt(11.4² + 8²) = 13.93 m, 12 s there and 12 s back.
    expect(seconds(before('lower', { on: 'I-0' }), 'pw', 'lower', { on: 'I-0' })).toBe(40 + 24)
  })

  test('the old insulator hangs up there until it is lowered', () => {
    const swapped = after('swap-insulator')
    expect(swapped.items['I-0']?.where.kind).toBe('aloft')
    expect(after('lower', { on: 'I-0' }).items['I-0']?.where.kind).toBe('tarp')
    expect(refused(swapped, 'pw', 'swap-insulator', { with: 'I-1', on: 'conductor-b' })).toBe(
      'swap-insulator/not-at-hand',
    )
  })
})

describe('on the ground', () => {
  test('a rod pulled with the lead on brings the lead down with it: it can be booked in', () => {
    const pulled = done(before('unclamp-earth-end'), 'gw', 'pull-rod', { on: 'rod/R-1' })
    expect(pulled.clamps).toEqual([])
    expect(pulled.items['E-07']?.where.kind).toBe('tarp')
    expect(refused(pulled, 'gw', 'book-in', { on: 'E-07' })).toBeUndefined()
  })

  test('a lead that still hangs on the conductors stays there when the rod comes out', () => {
    const site = after('clamp', { on: 'conductor-c' })
    const gw = { ...site.persons['gw']!, holds: [], place: { kind: 'ground', at: { x: 2.6, y: -2.35 } } as const }
    const pulled = done({ ...site, persons: { ...site.persons, gw } }, 'gw', 'pull-rod', { on: 'rod/R-1' })
    expect(pulled.items['E-07']?.where.kind).toBe('aloft')
    expect(pulled.clamps.map((it) => it.end)).toEqual(['1', '2', '3'])
  })

  test('whoever judges or books from the rod walks to the tarp and back', () => {
    const site = before('drive-rod')
    const beside = before('set-signs')
    const verdict = { on: 'E-08', values: { verdict: 'pass' } }
    // From (2.6, −2.35) to (−14, 10): 20.7 m, 18 s each way.
    expect(seconds(site, 'gw', 'judge', verdict)).toBe(4 + 36)
    expect(seconds(beside, 'gw', 'judge', verdict)).toBe(4)
    expect(seconds(site, 'gw', 'book-out', { on: 'E-08' })).toBe(8 + 36)
  })

  test('services are looked for with the feet at the place', () => {
    const site = before('locate-services')
    const at = { x: 2.6, y: -2.35 }
    const order: Order = { at: site.time, who: 'gw', do: 'locate-services', values: { at: { x: 6, y: 0 } } }
    const contacts = actions.get('locate-services')!.contacts!(site, order)
    expect(contacts.every((it) => it.contact.on.kind === 'ground')).toBe(true)
    expect(refused(site, 'gw', 'locate-services', { values: { at: { x: 1500, y: 20 } } })).toBe(
      'locate-services/out-of-reach',
    )
    expect(done(site, 'gw', 'locate-services', { values: { at } }).persons['gw']?.place).toEqual(
      site.persons['gw']?.place,
    )
  })
})

describe('the crossing', () => {
  const livened = (): Site => before('ask-source-off', { run: 'clean-livened' })
  const said = (site: Site): unknown => {
    const { says, values } = done(site, 'pic', 'look', { on: 'crossing' }).evidence.at(-1)!
    return [says, values]
  }

  test('shows the marks of a clash, and nothing before one', () => {
    expect(said(before('untie'))).toEqual(['see.crossing-clear', {}])
    expect(said(livened())).toEqual(['see.crossing-marked', { phases: 'B' }])
  })

  test('stays off from the asking until the permit is back', () => {
    expect(livened().feedersOut).toEqual([])
    expect(after('ask-source-off', { run: 'clean-livened' }).feedersOut).toEqual(['fx'])
    expect(before('return-permit', { run: 'clean-livened' }).feedersOut).toEqual(['fx'])
    expect(after('return-permit', { run: 'clean-livened' }).feedersOut).toEqual([])
  })
})

describe('the clamp of a bond lead', () => {
  const bond = (site: Site): unknown => site.clamps.find((it) => it.end === 'line')

  test('goes on a brushed seat and is tugged like any other', () => {
    const on = after('bond-line')
    expect(bond(on)).toMatchObject({ brushed: true, tugged: false, on: 'conductor-b' })
    expect(on.brushed).not.toContain('conductor-b')
    const tried = done(on, 'pw', 'tug', { on: 'conductor-b' })
    expect(bond(tried)).toMatchObject({ tugged: true })
    expect(tried.evidence.at(-1)).toMatchObject({ says: 'feel.clamp-still', values: { lead: 'B-02' } })
  })

  test('a loose one is found and tightened, the seated one beside it is left', () => {
    const loose = done(before('bond-line'), 'pw', 'bond-line', {
      with: 'B-02',
      on: 'conductor-b',
      values: { turns: 3 },
    })
    expect(done(loose, 'pw', 'tug', { on: 'conductor-b' }).evidence.at(-1)?.says).toBe('feel.clamp-turns')
    const turned = done(loose, 'pw', 'tighten', { on: 'conductor-b', values: { turns: 3 } })
    expect(turned.clamps.filter((it) => it.on === 'conductor-b').map((it) => it.turns)).toEqual([6, 6])
  })
})
