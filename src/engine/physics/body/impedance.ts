/**
 * Total impedance ZT of the human body against the voltage across it, 50/60 Hz, large contact areas (about 0.01 m²).
 * Source: IEC 60479-1:2005/2018 Tables 1 (dry), 2 (water-wet), 3 (salt-water-wet), hand to hand, "not exceeded for
 * 5/50/95 % of the population". All three from memory: Table 1 high confidence, the others medium.
 * Between the nodes: linear in voltage. Flat below 25 V (the tables start there; a dry skin is higher in truth, so a
 * small voltage is over- rather than understated as a current) and at the asymptote above 1000 V, where the skin counts
 * for nothing: wet and dry are the same.
 * Between the tabulated shares of the population: lognormal through the three, straight in the normal quantile on either
 * side of the median and on to 1 and 99 % (own choice; the standard gives the three only).
 * Contact area: only the tables for large contacts are here. A smaller contact (1000 mm² or less) has a higher impedance
 * below about 150 V; it is counted as a large one, which overstates its current.
 * Paths: four equal limbs, trunk neglected (same standard): hand to both feet is 0.75 ZT.
 */
import { exp, ln } from '../../math/portable'
import { normalQuantile } from '../../math/normal'
import { invariant } from '../../units/invariant'

/** Share of the population, %, whose impedance does not exceed the value. */
export type Percentile = 5 | 50 | 95
export type Skin = 'dry' | 'water-wet' | 'salt-wet'
export const percentiles = [5, 50, 95] as const satisfies readonly Percentile[]
export const skins = ['dry', 'water-wet', 'salt-wet'] as const satisfies readonly Skin[]

/** Nodes of the tables, V across the body. */
const nodeVoltages = [25, 50, 75, 100, 125, 150, 175, 200, 225, 400, 500, 700, 1000] as const

/** ZT in ohm at each node voltage. */
const tables: Readonly<Record<Skin, Readonly<Record<Percentile, readonly number[]>>>> = {
  dry: {
    5: [1750, 1375, 1125, 990, 900, 850, 825, 800, 775, 700, 625, 575, 575],
    50: [3250, 2500, 2000, 1725, 1550, 1400, 1325, 1275, 1225, 950, 850, 775, 775],
    95: [6100, 4600, 3600, 3125, 2675, 2350, 2175, 2050, 1900, 1275, 1150, 1050, 1050],
  },
  'water-wet': {
    5: [1175, 1100, 1025, 975, 900, 850, 825, 800, 775, 700, 625, 575, 575],
    50: [2175, 2000, 1825, 1675, 1550, 1400, 1325, 1275, 1225, 950, 850, 775, 775],
    95: [4100, 3675, 3275, 2950, 2675, 2350, 2175, 2050, 1900, 1275, 1150, 1050, 1050],
  },
  'salt-wet': {
    5: [960, 940, 920, 880, 850, 830, 810, 790, 770, 700, 625, 575, 575],
    50: [1300, 1275, 1250, 1225, 1200, 1180, 1155, 1135, 1115, 950, 850, 775, 775],
    95: [1755, 1720, 1685, 1655, 1620, 1590, 1560, 1530, 1505, 1275, 1150, 1050, 1050],
  },
}

/**
 * ZT hand to hand in ohm at `voltage` (V, across the body, its sign ignored).
 * @param percentile share of the population whose impedance does not exceed it, 1 to 99 %
 * @throws when `voltage` is not a number, or on another percentile.
 */
export function handToHandImpedance(voltage: number, percentile: number, skin: Skin): number {
  invariant(!Number.isNaN(voltage), 'a numeric body voltage', voltage)
  const table = tables[skin][percentile as Percentile] as readonly number[] | undefined
  return table === undefined ? betweenTables(voltage, percentile, skin) : onTable(table, voltage)
}

/** Lognormal through the median and the nearer of 5 and 95 %. */
function betweenTables(voltage: number, percentile: number, skin: Skin): number {
  invariant(percentile >= 1 && percentile <= 99, 'a percentile from 1 to 99', percentile)
  const middle = onTable(tables[skin][50], voltage)
  const edge = onTable(tables[skin][percentile < 50 ? 5 : 95], voltage)
  const share = normalQuantile(percentile / 100) / normalQuantile(percentile < 50 ? 0.05 : 0.95)
  return middle * exp(share * ln(edge / middle))
}

function onTable(table: readonly number[], voltage: number): number {
  const across = Math.abs(voltage)
  const last = nodeVoltages.length - 1
  if (across <= nodeVoltages[0]) return table[0]!
  if (across >= nodeVoltages[last]!) return table[last]!
  let upper = 1
  while (nodeVoltages[upper]! < across) upper += 1
  const lowerVoltage = nodeVoltages[upper - 1]!
  const share = (across - lowerVoltage) / (nodeVoltages[upper]! - lowerVoltage)
  return table[upper - 1]! + share * (table[upper]! - table[upper - 1]!)
}

/**
 * Paths that the impedance is tabulated or derived for. `trunk` is chest, back or seat; a knee on the ground counts as
 * trunk, because the leg above it is short (careful, own choice: the standard's figures by part of a limb are not at hand).
 */
export const impedancePaths = [
  'hand-hand',
  'hand-foot',
  'hand-feet',
  'both-hands-feet',
  'foot-foot',
  'hand-trunk',
  'both-hands-trunk',
] as const
export type ImpedancePath = (typeof impedancePaths)[number]

/** Part of ZT (hand to hand) by path: one limb is 0.5, two limbs side by side 0.25. */
const shareOfHandToHand: Readonly<Record<ImpedancePath, number>> = {
  'hand-hand': 1,
  'hand-foot': 1,
  'hand-feet': 0.75,
  'both-hands-feet': 0.5,
  'foot-foot': 1,
  'hand-trunk': 0.5,
  'both-hands-trunk': 0.25,
}

/** Total body impedance in ohm along `path` at `voltage` (V, across the body), percentile 1 to 99. */
export function bodyImpedance(voltage: number, percentile: number, skin: Skin, path: ImpedancePath): number {
  return shareOfHandToHand[path] * handToHandImpedance(voltage, percentile, skin)
}
