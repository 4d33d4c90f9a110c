import { expect, test } from 'vitest'
import { gearCatalogue } from '../../../src/engine'
import { crewView, stancesOf } from '../../../src/app/scene/people/crew'
import type { Site } from '../../../src/engine/site/site'
import { isolatedSite } from '../../engine/hazard/sites'
import { withItem } from '../../support/placedItem'
import { sceneOf } from '../../support/sceneSites'

const worn = [...gearCatalogue.values()].filter(({ worn: part }) => part !== undefined).map(({ id }) => id)

function wearing(type?: string): Site {
  const site = withItem(isolatedSite(), 'Z-1', type ?? 'boots', { kind: 'tarp' })
  const gw = { ...site.persons.gw!, wears: type === undefined ? [] : ['Z-1'] }
  return { ...site, persons: { ...site.persons, gw } }
}

function drawn(site: Site) {
  const { layout, picture } = sceneOf(site)
  const { built } = crewView(layout, picture, stancesOf(layout, picture))
  const parts = built.parts
    .filter(({ id }) => id === 'gw')
    .map(({ slot, geometry }) => `${slot} ${geometry.getAttribute('position').count}`)
  return { look: [...parts, built.wires.length].join(), hits: built.hits.map(({ id }) => id) }
}

test.each(worn)('%s is seen on whoever wears it, and can be pointed at there', (type) => {
  const [bare, on] = [drawn(wearing()), drawn(wearing(type))]
  expect(on.look).not.toBe(bare.look)
  if (type !== 'harness') expect(on.hits).toContain('Z-1')
})

test('what is no longer than a forearm is held as it is: a lamp has its glass, a rod is only hinted at', () => {
  const held = (type: string): readonly string[] => {
    const site = withItem(isolatedSite(), 'Z-1', type, { kind: 'person', person: 'gw' })
    const { layout, picture } = sceneOf(site)
    const { built } = crewView(layout, picture, stancesOf(layout, picture))
    return built.parts.filter(({ id }) => id === 'Z-1').map(({ slot }) => slot)
  }
  expect(held('lamp')).toContain('glass')
  expect(held('lock')).toContain('copper')
  expect(held('earth-rod')).toEqual(['rubberDark'])
})
