/** Networks by chance: what a file lets through of neutrals, neutral wire and circuits beside can be solved, or says not. */
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { declaredCorner, drawScenario, liven, type ScenarioBase } from '../../../src/engine'
import { readScenario } from '../../../src/files/scenario/read'
import { earthedSite, leftHandOnB, momentOf } from '../../engine/hazard/sites'
import { marrowBendText } from '../../support/marrowBend'

type Node = Record<string | number, unknown>

const wire = {
  id: 'neutral',
  xM: 0.3,
  heightM: 7.5,
  radiusM: 0.0045,
  gmrM: 0.0034,
  resistanceOhmPerM: 0.0006,
  earthEveryM: 200,
  earthResistanceOhm: 25,
  poleEarth: { at: { xM: 0, yM: 0.5 }, lengthM: 2, radiusM: 0.008 },
}

const beside = {
  id: 'p33',
  voltageV: 33_000,
  conductors: ['A', 'B', 'C'].map((phase, i) => ({
    id: `p33-${phase}`,
    phase,
    xM: 9 + i,
    heightM: 11,
    radiusM: 0.0075,
    gmrM: 0.0058,
    resistanceOhmPerM: 0.0003,
  })),
  fromM: -500,
  toM: 300,
  loadCurrentA: 150,
  faultCurrentA: 2000,
  faultTimeS: 0.5,
}

/** A neutral wire from both stations, a coil under the crossing circuit, 33 kV beside: every new part at once. */
function rich(): Node {
  const file = JSON.parse(marrowBendText()) as Node & { feeders: Node[]; livenings: Node[] }
  const [f1, f2, fx] = file.feeders
  Object.assign(f1!, { neutral: { kind: 'solid' }, neutralWire: structuredClone(wire) })
  Object.assign(f2!, {
    neutral: { kind: 'reactor', impedance: { resistanceOhm: 0.4, reactanceOhm: 2 } },
    neutralWire: structuredClone(wire),
  })
  const coil = { kind: 'arc-suppression-coil', tuning: 1, lossResistanceOhm: 600 }
  Object.assign(fx!, { neutral: coil, networkCapacitanceF: 4e-6 })
  file.parallels = [structuredClone(beside)]
  file.livenings.push(
    { id: 'induced', kind: 'induction', parallel: 'p33', phase: 'B' },
    { id: 'displaced', kind: 'pick-up', parallel: 'p33', phase: 'B' },
    { id: 'raised', kind: 'neutral-raised', feeder: 'f2', phase: 'C', impedanceOhm: 1 },
  )
  return file
}

function numbersIn(value: unknown): readonly (readonly (string | number)[])[] {
  if (typeof value === 'number') return [[]]
  if (typeof value !== 'object' || value === null) return []
  const keys: readonly (string | number)[] = Array.isArray(value) ? value.map((_, i) => i) : Object.keys(value)
  return keys.flatMap((key) => numbersIn((value as Node)[key]).map((path) => [key, ...path]))
}

const paths = numbersIn({ feeders: rich().feeders, parallels: rich().parallels, section: rich().section })

/** In both neutral wires alike, because they are one. */
function scaled(path: readonly (string | number)[], by: number): Node {
  const file = rich()
  const twins = path[2] === 'neutralWire' ? [0, 1].map((i) => ['feeders', i, ...path.slice(2)]) : [path]
  for (const twin of twins) {
    const holder = twin.slice(0, -1).reduce<Node>((node, key) => node[key] as Node, file)
    holder[twin.at(-1)!] = (holder[twin.at(-1)!] as number) * by
  }
  return file
}

it('is read as it stands', () => {
  const read = readScenario(JSON.stringify(rich()))
  expect(read.ok ? [] : read.issues).toEqual([])
})

it('lets through only what the circuit can be asked about, whatever the number', () => {
  let asked = 0
  const ask = (base: ScenarioBase, livening: string): void => {
    asked++
    const scenario = drawScenario(base, 5, 'practise')
    const answer = liven(momentOf({ ...earthedSite(), scenario }, leftHandOnB), livening, declaredCorner)
    if (answer.kind === 'unsolvable') return
    for (const it of answer.exposures) expect(Number.isFinite(it.bodyCurrent), it.path).toBe(true)
    expect(Number.isFinite(answer.siteRise)).toBe(true)
  }
  const factor = fc.constantFrom(0, 1e-3, 0.1, 0.5, 2, 10, 1e3, -1)
  const livening = fc.constantFrom('clash-b', 'induced', 'displaced', 'raised')
  fc.assert(
    fc.property(fc.constantFrom(...paths), factor, livening, (path, by, id) => {
      const read = readScenario(JSON.stringify(scaled(path, by)))
      if (read.ok) ask(read.value, id)
    }),
    { numRuns: 100, seed: 20310514 },
  )
  expect(asked).toBeGreaterThan(40)
}, 120_000)
