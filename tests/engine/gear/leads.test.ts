/**
 * Leads end by end: what their cable has, what a bad crimp adds and to which piece. Copper of 0.017241 Ω·mm²/m at 20 °C
 * (IEC 60028); a lead passes up to 1.05 times its cable and 0.32 mΩ (the method of ASTM F2249, from a secondary page).
 */
import { expect, test } from 'vitest'
import { gearCatalogue } from '../../../src/engine'
import { fittedLead } from '../../../src/engine/hazard/circuit/fitted'
import { isPieceOfEnd, leadPieces } from '../../../src/engine/gear/leadPieces'
import { startSite } from '../../../src/engine'
import type { Site } from '../../../src/engine/site/site'
import { leadResistance } from '../../../src/engine/physics/conductor'
import { marrowBend } from '../../support/marrowBend'

const leads = [...gearCatalogue.values()].filter((it) => it.ends !== undefined)

function siteWith(type: string, defects: readonly string[]): Site {
  const base = marrowBend()
  return startSite({ ...base, items: [...base.items, { id: 'X-9', type, label: {}, defects }] })
}

const resistance = (type: string, defects: readonly string[], ends: readonly string[]): number => {
  const { material, pieces } = fittedLead(siteWith(type, defects), 'X-9')
  const way = pieces.filter((it) => ends.includes(`${it.from}-${it.to}`))
  return way.reduce((sum, it) => sum + leadResistance(material, it.area, it.length, 20) + it.added, 0)
}

const passes = (ohm: number, metres: number, area: number): boolean =>
  ohm <= (1.05 * 0.017241 * metres) / area + 0.32e-3

test('tails from a boss and a chain have the pieces that they are made of', () => {
  const set = gearCatalogue.get('earth-set')!
  expect(leadPieces(set, 10, 2)).toEqual([
    { from: 'earth', to: 'boss', length: 10 },
    { from: 'boss', to: '1', length: 2 },
    { from: 'boss', to: '2', length: 2 },
    { from: 'boss', to: '3', length: 2 },
  ])
  const chain = leadPieces(gearCatalogue.get('earth-lead')!, 12, 1.5)
  expect(chain.map((it) => `${it.from}-${it.to} ${it.length}`)).toEqual(['earth-1 12', '1-2 1.5', '2-3 1.5'])
})

test('each end of every lead is crimped to one piece of it', () => {
  for (const type of leads) {
    const pieces = leadPieces(type, 1, 1)
    for (const end of type.ends!) expect(pieces.filter((it) => isPieceOfEnd(type, it, end))).toHaveLength(1)
  }
})

test('a sound lead passes in milliohms; a slipping crimp, broken strands and a loose boss do not', () => {
  // 12 m of 25 mm²: 8.28 mΩ; the test lets 9.01 mΩ pass.
  expect(resistance('earth-lead', [], ['earth-1']) * 1000).toBeCloseTo(8.28, 2)
  expect(passes(resistance('earth-lead', [], ['earth-1']), 12, 25)).toBe(true)
  for (const found of ['crimp-slip', 'clamp-slip-1', 'broken-strands', 'necked-cable', 'bird-caged-strands'])
    expect(passes(resistance('earth-lead', [found], ['earth-1']), 12, 25), found).toBe(false)
  for (const mark of ['scuffed-jacket', 'mud-on-clamps', 'tool-marks'])
    expect(passes(resistance('earth-lead', [mark], ['earth-1']), 12, 25), mark).toBe(true)
  const leg = ['earth-boss', 'boss-2']
  expect(passes(resistance('earth-set', [], leg), 12, 25)).toBe(true)
  for (const found of ['loose-boss', 'clamp-slip-2'])
    expect(passes(resistance('earth-set', [found], leg), 12, 25)).toBe(false)
})

test('what is wrong at one tail is wrong there alone', () => {
  for (const [leg, isGood] of [
    ['1', true],
    ['2', false],
    ['3', true],
  ] as const)
    expect(passes(resistance('earth-set', ['clamp-slip-2'], ['earth-boss', `boss-${leg}`]), 12, 25), leg).toBe(isGood)
  const [whole, second] = [resistance('earth-lead', [], ['2-3']), resistance('earth-lead', ['clamp-slip-2'], ['2-3'])]
  expect(second).toBe(whole)
  expect(resistance('earth-lead', ['clamp-slip-2'], ['1-2']) - resistance('earth-lead', [], ['1-2'])).toBeCloseTo(
    0.02,
    12,
  )
})
