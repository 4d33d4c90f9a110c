/**
 * Marrow-bend with other poles, lines, ground, truck and weather, for pictures of each kind. Measures are usual ones of the
 * trade (common practice, no source).
 */
import type { Pole } from '../../src/engine/site/pole'
import type { Scenario } from '../../src/engine/site/scenario'
import { allOf, besideSection, besides, multiEarthed, singleWire, spur } from './networks'

type Change = (scenario: Scenario) => Partial<Scenario>

/** 11 m over all, 2 m of it in the ground; HV at 8.95 m, LV 1.35 m below it, the outer wires 1 m from the axis. */
const elevenMetres: Change = ({ pole, conductors, lv }) => ({
  pole: { ...pole, height: 9, buttLength: 2, armHeight: 8.75, lvHeight: 7.6, stepBoltsTo: 7 },
  conductors: conductors.map((it) => ({ ...it, x: Math.sign(it.x), height: 8.95 })),
  lv: { ...lv, wires: lv.wires.map((it) => ({ ...it, height: 7.6 })) },
})

const asKind =
  (made: (shape: Omit<Pole, 'kind'>) => Pole): Change =>
  ({ pole }) => {
    const { number, height, armHeight, lvHeight, buttLength, diameter, armFixing, stepBoltFixing, stepBoltsTo } = pole
    return {
      pole: made({ number, height, armHeight, lvHeight, buttLength, diameter, armFixing, stepBoltFixing, stepBoltsTo }),
    }
  }

const wood = asKind((shape) => ({
  ...shape,
  kind: 'wood',
  moisture: 'damp',
  treatment: 'oil',
  surface: 'dry',
  arm: 'wood',
}))
const steel = asKind((shape) => ({ ...shape, kind: 'steel', diameter: 0.28 }))
const integralEarth: Change = ({ pole }) =>
  pole.kind === 'concrete' ? { pole: { ...pole, integralEarth: { terminal: 0.5, height: 1.6 } } } : {}

const transformer: Change = () => ({
  transformers: [
    {
      id: 'T1',
      connection: 'Dyn',
      phases: ['A', 'B', 'C'],
      highVoltage: 11_000,
      lowVoltage: 230,
      rating: 100_000,
      impedance: { re: 0.015, im: 0.04 },
      along: 0,
      fuses: { link: 'K', rating: 10 },
      neutralEarth: { resistance: 10, at: { x: 4, y: 3 } },
      lowVoltageClosed: false,
    },
  ],
})

/** Legs 2 m apart across the line, the platform between them. */
const twoLegs: Change = ({ pole, conductors }) => ({
  pole: { ...pole, secondLeg: { at: { x: 0, y: 2 }, armFixing: 1000 } },
  conductors: conductors.map((it, i) => ({ ...it, x: [-0.5, 1, 2.5][i]! })),
})

const fullPole: Change = () => ({
  metalwork: [
    { id: 'band-1', kind: 'band', height: 1.9, on: 'pole', fixing: 100 },
    { id: 'bolt-1', kind: 'bolt', height: 5.6, on: 'pole', fixing: 100 },
    { id: 'brace-1', kind: 'brace', height: 8.2, on: 'arm', fixing: 1 },
    { id: 'sheath-1', kind: 'cable-sheath', height: 7.4, on: 'pole', fixing: 100, earth: 5 },
    { id: 'lamp-1', kind: 'lamp-bracket', height: 6.2, on: 'pole', fixing: 100 },
  ],
})

const fencesAndPipes: Change = () => ({
  grounds: [
    {
      id: 'paddock',
      kind: 'fence',
      posts: [-12, -8, -4, 0, 4, 8].map((x) => ({ x, y: -8 })),
      postDepth: 0.4,
      postRadius: 0.025,
    },
    { id: 'trough', kind: 'pipe', resistance: 20, points: [{ x: -5, y: 5 }] },
    { id: 'telephone-earth', kind: 'earth', at: { x: 3, y: 5.5 }, resistance: 30 },
  ],
})

const boomTruck: Change = () => ({
  truck: {
    tyres: 1e6,
    outriggers: [-1, 1].flatMap((x) => [-1, 1].map((y) => ({ x: 2.2 * x, y: 2.7 + 1.7 * y, radius: 0.3 }))),
    boom: { leakage: 1e9, liner: 1e9 },
  },
})

const lamps: Change = ({ lv }) => ({
  lv: {
    ...lv,
    wires: lv.wires.map((it, i) => (i === 0 ? { ...it, lamps: { resistance: 50, cabinet: { x: 20, y: 12 } } } : it)),
  },
})

const wet: Change = () => ({ weather: { wind: 11, rain: true, thunder: false } })
const evening: Change = () => ({ startsAt: 18.5 * 3600 })
const generator: Change = () => ({
  embedded: [
    {
      id: 'farm-generator',
      kind: 'generator',
      transformer: 'T1',
      at: { x: -8, y: 11 },
      phases: ['A', 'B', 'C'],
      rating: 50_000,
    },
  ],
})
const fuseSwitch: Change = ({ switches }) => ({
  switches: switches.map((it, i) => (i === 0 ? { ...it, fuses: { link: 'K', rating: 25 } } : it)),
})
/** On the poles of the section itself, above its own wires. */
const sharedPoles = besides({
  ...besideSection,
  id: 'p11',
  conductors: besideSection.conductors.map((it, i) => ({ ...it, x: (i - 1) * 1.1, height: 10.1 })),
})

/** By name, as the address of the scene page has it. */
export const siteKinds: Readonly<Record<string, Change>> = {
  'marrow-bend': () => ({}),
  'eleven-metres': allOf(elevenMetres, integralEarth, fullPole),
  wood: allOf(elevenMetres, wood, lamps),
  steel: allOf(elevenMetres, steel, besides(), evening),
  double: allOf(elevenMetres, wood, twoLegs, transformer, fuseSwitch),
  transformer: allOf(elevenMetres, transformer, generator),
  'single-wire': allOf(elevenMetres, wood, singleWire),
  spur: allOf(elevenMetres, wood, spur, wet),
  neutral: allOf(multiEarthed(), fencesAndPipes),
  truck: allOf(elevenMetres, boomTruck, fencesAndPipes),
  'next-pole': allOf(elevenMetres, () => ({ nextPole: { number: 'P118', along: 60 } })),
  jumper: allOf(elevenMetres, () => ({ jumpers: ['conductor-b'] })),
  wet: allOf(elevenMetres, wet, evening, fencesAndPipes),
  shared: allOf(elevenMetres, sharedPoles, wood),
}
