import { describe, expect, it } from 'vitest'
import { bodiesAt, startSite, type Site } from '../../../src/engine'
import { marrowBend } from '../../support/marrowBend'

const start = startSite(marrowBend())
const withPerson = (site: Site, id: string, change: Partial<Site['persons'][string]>): Site => ({
  ...site,
  persons: { ...site.persons, [id]: { ...site.persons[id]!, ...change } },
})
const bodyOf = (site: Site, id: string, ...rest: [] | [Parameters<typeof bodiesAt>[1]]) =>
  bodiesAt(site, ...rest).find((it) => it.person === id)!

describe('bodiesAt', () => {
  it('stands everybody on two feet at their place', () => {
    const bodies = bodiesAt(start)
    expect(bodies.map((it) => it.person)).toEqual(['gw', 'pic', 'pw', 'so'])
    for (const body of bodies) expect(body.contacts.map((it) => it.limb)).toEqual(['left-foot', 'right-foot'])
    expect(bodyOf(start, 'pic').contacts[0]?.on).toEqual({ kind: 'ground', at: { x: -13, y: 8 }, stance: 'standing' })
  })

  it('takes paces while it moves', () => {
    const walking = bodiesAt(start, [], ['gw']).find((it) => it.person === 'gw')!
    expect(walking.contacts.map((it) => (it.on.kind === 'ground' ? it.on.stance : ''))).toEqual(['pace', 'pace'])
  })

  it('puts boots under the feet, on the ground and on step bolts', () => {
    const site = withPerson(start, 'pw', { wears: ['BT-42', 'W-1'], place: { kind: 'pole', station: 'above-lv' } })
    const { contacts } = bodyOf(site, 'pw')
    expect(contacts.filter((it) => it.limb.endsWith('foot')).map((it) => it.through)).toEqual([['BT-42'], ['BT-42']])
    // Feet 6.8 m and thigh 7.7 m on a pole whose step bolts end at 7.0 m; common practice, no source.
    expect(contacts.map((it) => ('height' in it.on ? it.on.height : 0))).toEqual([6.8, 6.8, 7.7])
    expect(contacts.find((it) => it.limb === 'thigh')?.through).toEqual([])
  })

  it('puts the cover between thigh and pole where it reaches, and only there', () => {
    const up = withPerson(start, 'pw', { place: { kind: 'pole', station: 'above-lv' } })
    const thigh = (from: number, to: number) =>
      bodyOf({ ...up, cover: { item: 'C-15', from, to, checked: true } }, 'pw').contacts.find(
        (it) => it.limb === 'thigh',
      )?.through
    expect(thigh(7.2, 9)).toEqual(['C-15'])
    expect(thigh(7.8, 9)).toEqual([])
    expect(thigh(7.1, 7.6)).toEqual([])
  })

  it('lets an act take over a limb, gloves nearest the skin, then what the act holds', () => {
    const site = withPerson(start, 'pw', { wears: ['W-1'], place: { kind: 'pole', station: 'above-lv' } })
    const act = { limb: 'left-hand', on: { kind: 'conductor', id: 'conductor-b' }, through: ['S-11'] } as const
    const { contacts } = bodyOf(site, 'pw', [{ person: 'pw', contact: act }])
    expect(contacts.find((it) => it.limb === 'left-hand')?.through).toEqual(['W-1', 'S-11'])
    const foot = { limb: 'left-foot', on: { kind: 'step-bolt', height: 3 }, through: [] } as const
    expect(
      bodyOf(site, 'pw', [{ person: 'pw', contact: foot }]).contacts.filter((it) => it.limb === 'left-foot'),
    ).toHaveLength(1)
  })

  it('counts the guard of that wire, not of another', () => {
    const site = { ...start, guards: [{ item: 'L-51', on: 'lv-b' }] }
    const touch = (id: string) =>
      bodyOf(site, 'pw', [
        { person: 'pw', contact: { limb: 'right-hand', on: { kind: 'lv-wire', id }, through: [] } },
      ]).contacts.at(-1)
    expect(touch('lv-b')?.through).toEqual(['L-51'])
    expect(touch('lv-n')?.through).toEqual([])
  })
})
