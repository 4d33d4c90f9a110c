/** Two people drive a rod at one place at the same time: the ground is free when both begin, and not when the second ends. */
import { expect, test } from 'vitest'
import { openTimeline, extendTimeline, startSite, type Order, type Site } from '../../../src/engine'
import { sweep } from '../../../src/engine/hazard/sweep'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import { createSweepCache } from '../../../src/engine/hazard/sweepCache'
import { marrowBend } from '../../support/marrowBend'

const start = startSite(marrowBend(2))
const place = { x: start.truck.x + 1, y: start.truck.y }

function ready(): Site {
  const items = { ...start.items }
  for (const id of ['R-1', 'R-2', 'H-1']) {
    items[id] = { ...items[id]!, where: { kind: 'tarp' }, bookedOut: true }
  }
  const persons = { ...start.persons }
  for (const id of ['gw', 'pic']) persons[id] = { ...persons[id]!, place: { kind: 'ground', at: place }, holds: [] }
  return { ...start, items, persons }
}

const drive = (who: string, rod: string, at: number): Order => ({
  at,
  who,
  do: 'drive-rod',
  with: rod,
  values: { at: place, depth: 1.8 },
})

test.each([0, 5])('the second, %i s later, finds the ground taken and has spent the time', (later) => {
  const opening = ready()
  const first = extendTimeline(openTimeline(opening.scenario, opening), drive('gw', 'R-1', opening.time))
  const both = extendTimeline(first, drive('pic', 'R-2', opening.time + later))
  const [one, two] = both.entries
  expect(one).toMatchObject({ outcome: 'done' })
  expect(two).toMatchObject({ outcome: 'refused', refusal: { code: 'drive-rod/ground-taken' } })
  expect(two!.end - two!.start).toBeGreaterThan(60)
  expect(both.end.rods.map((it) => it.item)).toEqual(['R-1'])
  // no state of it holds two rods in one place: the soil has an answer for each
  expect(sweep(both, createSweepCache(), undefined, [declaredCorner]).unsolved).toEqual([])
})
