/**
 * `line-coupling`: what live conductors do to dead ones beside them. Those with `volt` or `amp` are live, the others
 * dead, all of them in the order of the list; dead ones are joined where they are earthed at both ends.
 */
import { capacitanceMatrix, earthedCurrents, floatingVoltages, inducedVoltages, loopCurrents } from '../../../engine'
import { magnitude, PI, polar, seriesImpedance, type Complex } from '../../../engine'
import type { Inputs } from '../inputs'
import { model } from '../model'

const metresPerKilometre = 1000

export const lineCouplingModel = model(
  'line-coupling',
  (inputs) => {
    const conductors = inputs.list('conductors', readConductor)
    if (conductors.every(({ isLive }) => isLive)) inputs.refuse('there is no dead conductor')
    if (conductors.every(({ isLive }) => !isLive)) inputs.refuse('there is no live conductor')
    return {
      frequency: inputs.number('frequencyHz', { above: 0 }),
      earthResistivity: inputs.number('earthOhmM', { above: 0 }),
      length: inputs.number('lengthM', { above: 0 }),
      earths: inputs.number('earthsOhm', { atLeast: 0 }),
      conductors,
    }
  },
  ({ frequency, earthResistivity, length, earths, conductors }) => {
    const liveBy = (value: 'voltage' | 'current') =>
      conductors.flatMap((it, conductor) => (it.isLive ? [{ conductor, value: it[value] }] : []))
    const dead = conductors.flatMap(({ isLive }, i) => (isLive ? [] : [i]))
    const capacitance = capacitanceMatrix(conductors)
    const series = seriesImpedance(frequency, earthResistivity, conductors)
    const sizes = (values: readonly Complex[], per = 1) => values.map((value) => magnitude(value) * per)
    return {
      floatingV: sizes(floatingVoltages(capacitance, liveBy('voltage'), dead)),
      earthedA: sizes(earthedCurrents(frequency, capacitance, liveBy('voltage'), dead), length),
      inducedVPerKm: sizes(inducedVoltages(series, liveBy('current'), dead), metresPerKilometre),
      loopA: sizes(loopCurrents(series, liveBy('current'), dead, length, earths)),
    }
  },
)

function readConductor(inputs: Inputs) {
  const phasor = (key: string, angleKey: string) =>
    inputs.has(key) ? polar(inputs.number(key), (inputs.number(angleKey, {}, 0) * PI) / 180) : polar(0, 0)
  return {
    x: inputs.number('xM'),
    y: inputs.number('yM', { above: 0 }),
    radius: inputs.number('radiusM', { above: 0 }),
    gmr: inputs.number('gmrM', { above: 0 }),
    acResistance: inputs.number('acOhmPerKm', { atLeast: 0 }) / metresPerKilometre,
    isLive: inputs.has('volt') || inputs.has('amp'),
    voltage: phasor('volt', 'voltAngleDeg'),
    current: phasor('amp', 'ampAngleDeg'),
  }
}
