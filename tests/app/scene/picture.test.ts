import { expect, test } from 'vitest'
import { gearCatalogue, siteAt } from '../../../src/engine'
import { laidOut } from '../../../src/app/scene/gear/laidOut'
import { sceneAt, sceneOf, timelineOf } from '../../support/sceneSites'
import { secondOf } from '../../support/secondOf'

const timeline = timelineOf('clean')

test('whatever is hidden in any item or switch, the scene draws the same', () => {
  for (const when of ['receive-step', 'test/conductor-a', 'untie']) {
    const site = siteAt(timeline, secondOf(timeline, when))
    const drawn = JSON.stringify(sceneOf(site).picture)
    let flips = 0
    for (const [id, item] of Object.entries(site.items))
      for (const defect of gearCatalogue.get(item.type)?.defects ?? []) {
        const flipped = item.defects.includes(defect.id) ? [] : [...item.defects, defect.id]
        const changed = { ...site, items: { ...site.items, [id]: { ...item, defects: flipped, failed: true } } }
        expect(JSON.stringify(sceneOf(changed).picture), `${id} ${defect.id}`).toBe(drawn)
        flips++
      }
    expect(flips).toBeGreaterThan(100)
  }
})

test('a blade is drawn only as it was last looked at', () => {
  const before = sceneAt(timeline, 'open-switch!').picture.switches.find(({ id }) => id === 'switch-27')!
  expect(before.blades).toEqual({ A: 'not-looked', B: 'not-looked', C: 'not-looked' })
  const looking = sceneAt(timeline, 'look/switch-27/A!').picture.switches.find(({ id }) => id === 'switch-27')!
  expect(looking.blades).toEqual({ A: 'open', B: 'not-looked', C: 'not-looked' })
  const hung = timelineOf('blade-b-left-closed')
  const site = siteAt(hung, secondOf(hung, 'drive-rod'))
  expect(site.switches['switch-27']!.blades.B).toBe('closed')
  const seen = sceneOf(site).picture.switches.find(({ id }) => id === 'switch-27')!
  const looked = site.evidence.filter(({ of, by }) => of === 'switch-27/B' && by === 'look')
  expect(seen.blades.B).toBe(looked.length === 0 ? 'not-looked' : 'closed')
})

test('a conductor is live, tested, earthed in the order in which the crew made it so', () => {
  const stateAt = (when: string) => sceneAt(timeline, when).picture.conductors['conductor-a']
  expect(stateAt('prove/D-04')).toBe('live')
  expect(stateAt('brush/conductor-a')).toBe('tested')
  expect(stateAt('clamp/conductor-a!')).toBe('earthed')
  expect(stateAt('unclamp/conductor-a!')).not.toBe('earthed')
})

test('boots are those that are worn, gear lies on the tarp once it is booked out', () => {
  const start = sceneAt(timeline, 0).picture
  expect(start.tarp).toEqual([])
  expect(start.people.every(({ wears }) => wears.length === 0)).toBe(true)
  const out = sceneAt(timeline, 'receive-step').picture
  expect(out.tarp).toContain('E-07')
  expect(out.tarp).not.toContain('E-08')
})

test('each type of the catalogue has its shape on the tarp', () => {
  expect(Object.keys(laidOut).sort()).toEqual([...gearCatalogue.keys()].sort())
})
