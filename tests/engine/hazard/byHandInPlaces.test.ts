/**
 * One conductor comes alive while the earths are on, in six places: what flows, how far the site rises, when the relay
 * opens, what a bystander's pace has. Worked by hand from the place's own file, none from this program:
 *
 * - rod: ρ/2πL (ln 4L/a - 1) (Dwight 1936, from memory); ground beside it: ρI/2πL asinh(L/r) (Sunde, line source);
 * - line with earth return: R + ωμ0/8, X = ωμ0/2π ln(De/GMR), De = 659 m √(ρ/f) (Carson, first terms);
 * - relay: IEC 60255-151 standard inverse 0.14/(M^0.02 - 1), IEEE C37.112 very inverse 19.61/(M² - 1) + 0.491;
 * - coil: U/R of its losses beside (1 - tuning) of the charging current 3ωCU (symmetrical components);
 * - neutral earthed again and again: the part of the current that it does not carry by induction, 1 - zm/zn, into two
 *   ladders side by side, Z∞ = z/2 + √(z²/4 + zR) (ladder theory).
 *
 * Left out by hand: capacitance of a resistance-earthed network, the pole's butt beside the rod. Two layers of soil are
 * replaced by one, so that the rod has a closed form.
 */
import { describe, expect, test } from 'vitest'
import type { Feeder, Scenario } from '../../../src/engine/site/scenario'
import { runTimeline, solveInstant, isUnsolvable, declaredCorner } from '../../../src/engine'
import { recorded } from '../../support/rules/recorded'

const mu0 = 4e-7 * Math.PI

/** [real, imaginary] */
type Z = readonly [number, number]
const plus = (...all: readonly Z[]): Z => [all.reduce((sum, z) => sum + z[0], 0), all.reduce((sum, z) => sum + z[1], 0)]
const times = (a: Z, b: Z): Z => [a[0] * b[0] - a[1] * b[1], a[0] * b[1] + a[1] * b[0]]
const size = (z: Z): number => Math.hypot(...z)
const over = (a: Z, b: Z): Z => {
  const square = b[0] ** 2 + b[1] ** 2
  return [(a[0] * b[0] + a[1] * b[1]) / square, (a[1] * b[0] - a[0] * b[1]) / square]
}
const root = (z: Z): Z => {
  const [half, by] = [Math.atan2(z[1], z[0]) / 2, Math.sqrt(size(z))]
  return [by * Math.cos(half), by * Math.sin(half)]
}
const scaled = (z: Z, by: number): Z => [z[0] * by, z[1] * by]

function place(slug: string, soil?: number) {
  const { scenario: drawn, orders } = recorded('clean', slug)
  const scenario: Scenario =
    soil === undefined ? drawn : { ...drawn, soil: { ...drawn.soil, layers: [{ resistivity: soil }] } }
  const timeline = runTimeline({ ...scenario, visible: null }, orders)
  const reported = timeline.entries.find(({ order }) => order.do === 'report-earths')!
  const moment = timeline.moments.find(({ from }) => from >= reported.start)!
  const { frequency } = scenario
  const feeder = (id: string): Feeder => scenario.feeders.find((it) => it.id === id)!
  const resistivity = scenario.soil.layers[0]!.resistivity
  const w = 2 * Math.PI * frequency
  const reactance = (distance: number): number =>
    ((w * mu0) / (2 * Math.PI)) * Math.log((659 * Math.sqrt(resistivity / frequency)) / distance)
  const along = (id: string): number => Math.abs(scenario.switches.find((it) => it.feeder === id)!.along)
  const self = (it: Feeder): Z => [it.conductors[0]!.resistance + (w * mu0) / 8, reactance(it.conductors[0]!.gmr)]
  /** Source, station and line up to the pole, ohm. */
  const upTo = (id: string): Z => {
    const it = feeder(id)
    const { re, im } = it.sourceImpedance
    return plus([re, im], [it.stationEarth, 0], scaled(self(it), it.length + along(id)))
  }
  const rod = moment.site.rods[0]
  const dwight = rod && (resistivity / (2 * Math.PI * rod.depth)) * (Math.log((4 * rod.depth) / 0.008) - 1)
  const ground = (current: number, r: number): number =>
    ((resistivity * current) / (2 * Math.PI * rod!.depth)) * Math.asinh(rod!.depth / r)
  const told = (livening: string) => {
    const instant = solveInstant(moment, livening, declaredCorner)
    if (isUnsolvable(instant)) throw new Error(instant.reason)
    const { siteRise, liveCurrent, duration, clearedBy, exposures } = instant.story
    const pace = exposures.find(({ path }) => path === 'bystander-pace')?.prospectiveVoltage
    return { siteRise, liveCurrent, duration, clearedBy, pace }
  }
  /** Of the barrier's outline from the rod, metres: where a bystander comes nearest. */
  const nearest = Math.min(
    ...moment.site.barrier!.flatMap(({ x, y }) => [Math.abs(x - (rod?.at.x ?? 0)), Math.abs(y - (rod?.at.y ?? 0))]),
  )
  /** Earths fitted at the open switches, ohm. */
  const atSwitches = Object.values(moment.site.switches).flatMap(({ earth }) => (earth ? [earth.resistance] : []))
  return { scenario, feeder, upTo, self, reactance, w, along, dwight, ground, told, nearest, atSwitches }
}

const near = (found: number, byHand: number, share: number): void => {
  expect(Math.abs(found / byHand - 1), `${found} beside ${byHand}`).toBeLessThan(share)
}

const standardInverse = (current: number, pickup: number, multiplier: number): number =>
  (multiplier * 0.14) / ((current / pickup) ** 0.02 - 1)

describe('six places', () => {
  test('kestrel-flat, neutral solidly earthed: the rod limits; a pace six metres from it', () => {
    const { upTo, dwight, ground, told, nearest } = place('kestrel-flat')
    const current = 11000 / Math.sqrt(3) / size(plus(upTo('f4'), [dwight!, 0]))
    const found = told('blade-b-shut')
    near(found.liveCurrent, current, 0.01)
    near(found.siteRise, current * dwight!, 0.01)
    expect(found.clearedBy).toBe('earth-fault')
    near(found.duration, standardInverse(current, 40, 0.2) + 0.06, 0.02)
    near(found.pace!, ground(current, nearest) - ground(current, nearest + 1), 0.03)
  })

  test('highfell-crossing, 33 kV swings into it: three times the voltage, behind its own resistor', () => {
    const { scenario, feeder, dwight, told } = place('highfell-crossing')
    const fx = feeder('fx')
    const neutral = fx.neutral.kind === 'resistor' ? fx.neutral.resistance : NaN
    const { re, im } = fx.sourceImpedance
    // 1.5 km of its own line and 0.3 km of the section, some ohms beside 85.
    const line = Math.abs(scenario.section.crossingAlong)
    const way: Z = plus([re + neutral + fx.stationEarth + 0.1 + dwight!, im], [0.0006 * line, 0.0008 * line])
    const own: Z = [(fx.conductors[0]!.resistance + 5e-5) * fx.length, 0.00075 * fx.length]
    const current = 33000 / Math.sqrt(3) / size(plus(way, own))
    const found = told('clash-b')
    near(found.liveCurrent, current, 0.02)
    near(found.siteRise, current * dwight!, 0.03)
    near(found.duration, standardInverse(current, 60, 0.15) + feeder('fx').breakerTime, 0.03)
  })

  test('sedgeland-drove, coil: what its losses and its mistuning leave flows for ever, through rod and main earth', () => {
    const { feeder, w, dwight, told, atSwitches } = place('sedgeland-drove')
    expect(atSwitches).toHaveLength(1)
    const earths = 1 / (1 / dwight! + 1 / atSwitches[0]!)
    const f5 = feeder('f5')
    const coil = f5.neutral.kind === 'arc-suppression-coil' ? f5.neutral : undefined
    const own = 4.4e-9 * (f5.length / 1000)
    const charging = 3 * w * (f5.networkCapacitance! + own)
    const left: Z = [1 / coil!.lossResistance, charging * (1 - coil!.tuning)]
    const current = 11000 / Math.sqrt(3) / size(plus(over([1, 0], left), [earths, 0]))
    const found = told('blade-b')
    near(found.liveCurrent, current, 0.03)
    near(found.siteRise, current * earths, 0.03)
    expect(found.clearedBy).toBe('nothing')
  })

  test('bellweather-farm, one wire with the earth as its return: both earths in the loop', () => {
    const { upTo, dwight, told, feeder } = place('bellweather-farm', 150)
    const current = 12700 / size(plus(upTo('s3'), [dwight!, 0]))
    const found = told('blade-b')
    near(found.liveCurrent, current, 0.02)
    near(found.siteRise, current * dwight!, 0.02)
    const { pickup, multiplier } = feeder('s3').earthFault
    near(found.duration, standardInverse(current, pickup, multiplier) + feeder('s3').breakerTime, 0.02)
  })

  test('gannetry-spit, an earth cast in: with 800 Ω at its terminal it takes a fiftieth, the rod the rest', () => {
    const { upTo, dwight, told } = place('gannetry-spit')
    const neutral = 12.7
    const current = 11000 / Math.sqrt(3) / size(plus(upTo('f11'), [neutral + dwight!, 0]))
    const found = told('blade-b')
    near(found.liveCurrent, current, 0.03)
    near(found.siteRise, current * dwight!, 0.03)
  })

  test('rustmesa-junction, a neutral earthed at every other pole: over 1 kA, the site at some hundred volts', () => {
    const { self, feeder, reactance, w, told, along } = place('rustmesa-junction', 150)
    const c1 = feeder('c1')
    const wire = c1.neutralWire!
    const zn: Z = [wire.resistance + (w * mu0) / 8, reactance(wire.gmr)]
    const phase = c1.conductors[0]!
    const mutual: Z = [(w * mu0) / 8, reactance(Math.hypot(phase.x - wire.x, phase.height - wire.height))]
    const carried = over(mutual, zn)
    const notCarried: Z = [1 - carried[0], -carried[1]]
    const span = scaled(zn, wire.earthEvery)
    const ladder = plus(
      scaled(span, 0.5),
      root(plus(scaled(times(span, span), 0.25), scaled(span, wire.earthResistance))),
    )
    // By Kron: of each metre of line, zp - zm²/zn; the ends lie in two ladders, and in the station's own earth.
    const atPole = scaled(times(times(notCarried, notCarried), ladder), 0.5)
    const atStation = times(times(notCarried, notCarried), over(scaled(ladder, 0.5), plus(ladder, [0.5, 0])))
    const length = c1.length + along('c1')
    const reduced = plus(self(c1), scaled(over(times(mutual, mutual), zn), -1))
    const { re, im } = c1.sourceImpedance
    const loop = plus([re, im], scaled(reduced, length), atPole, atStation)
    const current = 12470 / Math.sqrt(3) / size(loop)
    const found = told('blade-a')
    near(found.liveCurrent, current, 0.03)
    near(found.siteRise, (size(notCarried) * current * size(ladder)) / 2, 0.06)
  })
})
