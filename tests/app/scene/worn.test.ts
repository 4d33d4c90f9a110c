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
