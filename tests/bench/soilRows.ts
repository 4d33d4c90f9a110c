/** Twelve electrodes in soil of two layers: their matrix from nothing, and when it is known. */
import { cachedGround, createSweepCache } from '../../src/engine/hazard/sweepCache'
import { declaredCorner } from '../../src/engine/hazard/corner'
import { fittedOnce, scenarioInCorner } from '../../src/engine/hazard/liven'
import { solveElectrodes, type Electrode, type Soil } from '../../src/engine/physics/soil'
import { earthedSite } from '../engine/hazard/sites'
import { timed, timedMany, type Row } from './measure'

const soil: Soil = { layers: [{ resistivity: 100, thickness: 2 }, { resistivity: 300 }] }

const twelve: readonly Electrode[] = Array.from({ length: 12 }, (_, i) => ({
  id: `rod ${i}`,
  kind: 'rod',
  at: { x: 4 * (i % 4), y: 5 * Math.floor(i / 4) },
  top: 0,
  length: 1.8 + 0.1 * i,
  radius: 0.008,
}))

export function soilRows(): readonly Row[] {
  const first = timed(
    () => undefined,
    () => solveElectrodes(soil, twelve).resistance,
    { first: 5, counted: 15 },
  )
  const site = earthedSite()
  const scenario = scenarioInCorner(site.scenario, declaredCorner)
  const cache = createSweepCache()
  cachedGround(cache, scenario, fittedOnce(site))
  const known = timedMany(() => cachedGround(cache, scenario, fittedOnce(site)), 1000)
  return [
    { name: 'matrix of 12 electrodes, two layers', unit: 'ms', ...first, target: 20, note: '12 rods' },
    { name: 'the same, known', unit: 'ms', ...known, target: null, note: 'a site’s own electrodes' },
  ]
}
