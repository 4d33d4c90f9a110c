/** Transformers, other people's sources and the low voltage in a scenario file: what is read, every fault at its path. */
import { describe, expect, it } from 'vitest'
import { drawScenario, startSite } from '../../../src/engine'
import type { Issue } from '../../../src/files/issue'
import { readScenario } from '../../../src/files/scenario/read'
import { marrowBendText } from '../../support/marrowBend'

type Json = Record<string, unknown>
interface File extends Json {
  lv: Json & { wires: Json[]; neutralEarth: Json; houseEarths?: Json[]; fedBy?: string }
  transformers: Json[]
  embedded: Json[]
  livenings: Json[]
}

const t1 = (): Json => ({
  id: 't1',
  connection: 'Dyn',
  clock: 11,
  phases: ['A', 'B', 'C'],
  highVoltageV: 11_000,
  lowVoltageV: 230,
  ratingVA: 25_000,
  impedancePerUnit: { resistance: 0.02, reactance: 0.04 },
  alongM: -120,
  fuses: { link: 'K', ratingA: 6 },
  neutralEarth: { resistanceOhm: 10 },
  lowVoltageClosed: true,
  loadVA: 10_000,
})

const set1 = (): Json => ({
  id: 'set-1',
  kind: 'generator',
  transformer: 't1',
  at: { xM: -120, yM: 20 },
  phases: ['A', 'B', 'C'],
  ratingVA: 5000,
  impedancePerUnit: { resistance: 0, reactance: 0.25 },
  stall: { share: 2, afterS: 5 },
})

const roof = (): Json => ({
  id: 'roof',
  kind: 'inverter',
  transformer: 't1',
  at: { xM: -100, yM: 25 },
  phases: ['B'],
  ratingVA: 10_000,
  limit: 1.2,
  tripsS: 0.2,
})

function file(): File {
  const base = JSON.parse(marrowBendText()) as File
  base.transformers = [t1()]
  base.embedded = [set1(), roof()]
  base.lv.wires.push({
    id: 'lv-s',
    phase: 'A',
    xM: 0.5,
    heightM: 6.6,
    lamps: { resistanceOhm: 60, cabinet: { xM: 30, yM: 9 } },
  })
  base.lv.houseEarths = [
    {
      distanceM: 30,
      resistanceOhm: 40,
      wire: { resistanceOhmPerM: 0.0006, reactanceOhmPerM: 0.0003 },
      at: { xM: -18, yM: 6 },
    },
    { distanceM: 70, resistanceOhm: 20, wire: { resistanceOhmPerM: 0.0006, reactanceOhmPerM: 0.0003 } },
  ]
  base.livenings.push(
    { id: 'set-on', kind: 'back-feed', source: 'set-1' },
    { id: 'dusk', kind: 'street-lamps-on', wire: 'lv-s' },
    { id: 'touch', kind: 'lead-on-low-voltage', wire: 'lv-b', impedanceOhm: 0.01 },
  )
  return base
}

const issuesOf = (value: unknown): readonly Issue[] => {
  const read = readScenario(JSON.stringify(value))
  return read.ok ? [] : read.issues
}
const pathsOf = (change: (it: File) => void): readonly string[] => {
  const changed = file()
  change(changed)
  return issuesOf(changed).map((issue) => issue.path)
}

describe('a scenario with transformers', () => {
  it('is read with its units taken off, and begun with carriers in and owners switched off', () => {
    const read = readScenario(JSON.stringify(file()))
    if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 1))
    const { transformers, embedded, lv, livenings } = read.value
    expect(transformers?.[0]).toMatchObject({ rating: 25_000, impedance: { re: 0.02, im: 0.04 }, along: -120 })
    expect(embedded?.[1]).toMatchObject({ limit: 1.2, trips: 0.2 })
    expect(lv.houseEarths?.[0]).toMatchObject({ distance: 30, wire: { re: 0.0006, im: 0.0003 }, at: { x: -18, y: 6 } })
    expect(livenings.slice(-3).map((it) => it.kind)).toEqual(['back-feed', 'street-lamps-on', 'lead-on-low-voltage'])
    const site = startSite(drawScenario(read.value, 2, 'practise'))
    expect(site.carriers).toEqual({ t1: 'in' })
    expect(Object.entries(site.mains).map(([id, it]) => `${id} ${it.position}`)).toEqual([
      'lv-s open',
      'roof open',
      'set-1 open',
      't1 closed',
    ])
  })

  it('customers may draw something', () => {
    const read = readScenario(JSON.stringify(file()))
    expect(read.ok && read.value.transformers?.[0]?.load).toBe(10_000)
  })

  it('a low-voltage side left closed without a load had an answer of 1 mA where it could be 0.2 A: it is refused', () => {
    const [found] = issuesOf(
      (() => {
        const open = file()
        delete open.transformers[0]!.loadVA
        return open
      })(),
    )
    expect(found?.path).toBe('$.transformers[0].loadVA')
    expect(pathsOf((it) => Object.assign(it.transformers[0]!, { lowVoltageClosed: false, loadVA: undefined }))).toEqual(
      [],
    )
  })

  it('an inverter may never stop', () => {
    expect(pathsOf((it) => void (it.embedded[1]!.tripsS = 'never'))).toEqual([])
    expect(pathsOf((it) => void (it.embedded[1]!.tripsS = 'seldom'))).toEqual(['$.embedded[1].tripsS'])
    expect(pathsOf((it) => void (it.embedded[1]!.tripsS = 0))).toEqual(['$.embedded[1].tripsS'])
  })

  it.each<readonly [string, (it: File) => void, readonly string[]]>([
    [
      'phases of the wrong number',
      (it) => void (it.transformers[0]!.phases = ['A', 'B']),
      ['$.transformers[0].phases'],
    ],
    ['a phase twice', (it) => void (it.transformers[0]!.phases = ['A', 'B', 'B']), ['$.transformers[0].phases']],
    ['an hour that the group has not', (it) => void (it.transformers[0]!.clock = 6), ['$.transformers[0].clock']],
    ['off the section', (it) => void (it.transformers[0]!.alongM = -1500), ['$.transformers[0].alongM']],
    [
      'no reactance',
      (it) => void (it.transformers[0]!.impedancePerUnit = { resistance: 0, reactance: 0 }),
      ['$.transformers[0].impedancePerUnit.reactance'],
    ],
    ['a load of nothing', (it) => void (it.transformers[0]!.loadVA = 0), ['$.transformers[0].loadVA']],
    ['a rating of nothing', (it) => void (it.transformers[0]!.ratingVA = 0), ['$.transformers[0].ratingVA']],
    [
      'an earth that only one wire needs',
      (it) => void (it.transformers[0]!.highEarth = { resistanceOhm: 9 }),
      ['$.transformers[0].highEarth'],
    ],
    [
      'one wire without its earth; its low side gives one phase',
      (it) => Object.assign(it.transformers[0]!, { connection: 'single-wire', phases: ['A'], clock: undefined }),
      ['$.transformers[0].highEarth', '$.embedded[0].phases', '$.embedded[1].phases'],
    ],
    [
      'a source behind no transformer',
      (it) => void (it.embedded[0]!.transformer = 't9'),
      ['$.embedded[0].transformer'],
    ],
    [
      'a generator without impedance',
      (it) => void delete it.embedded[0]!.impedancePerUnit,
      ['$.embedded[0].impedancePerUnit'],
    ],
    [
      'an inverter with one',
      (it) => void (it.embedded[1]!.impedancePerUnit = { resistance: 0, reactance: 1 }),
      ['$.embedded[1].impedancePerUnit'],
    ],
    [
      'an inverter without limit or end',
      (it) => {
        delete it.embedded[1]!.limit
        delete it.embedded[1]!.tripsS
      },
      ['$.embedded[1].limit', '$.embedded[1].tripsS'],
    ],
    ['a generator with what only an inverter has', (it) => void (it.embedded[0]!.limit = 1), ['$.embedded[0].limit']],
    ['a tie that stalls', (it) => void (it.embedded[0]!.kind = 'tie'), ['$.embedded[0].stall']],
    ['an id twice', (it) => void (it.embedded[1]!.id = 't1'), ['$.embedded[1].id']],
    [
      'a house nearer than the one before',
      (it) => void (it.lv.houseEarths![1]!.distanceM = 20),
      ['$.lv.houseEarths[1].distanceM'],
    ],
    [
      'an earth in the foot of the pole',
      (it) => void (it.lv.houseEarths![0]!.at = { xM: 0.2, yM: 0.3 }),
      ['$.lv.houseEarths[0].at'],
    ],
    ['a feeding transformer that is none', (it) => void (it.lv.fedBy = 't9'), ['$.lv.fedBy']],
    [
      'a feeding transformer of another voltage and earth',
      (it) => {
        it.lv.fedBy = 't1'
        it.lv.voltageV = 240
      },
      ['$.lv.voltageV', '$.lv.neutralEarth.resistanceOhm'],
    ],
    ['a back-feed from nobody', (it) => void (it.livenings.at(-3)!.source = 'roof-2'), ['$.livenings[6].source']],
    ['lamps on a wire without any', (it) => void (it.livenings.at(-2)!.wire = 'lv-a'), ['$.livenings[7].wire']],
    ['a touch of no wire', (it) => void (it.livenings.at(-1)!.wire = 'lv-z'), ['$.livenings[8].wire']],
  ])('%s is told at its path', (_, change, paths) => {
    expect(pathsOf(change)).toEqual(paths)
  })

  it('tells all of them at once', () => {
    const paths = pathsOf((it) => {
      it.transformers[0]!.clock = 6
      it.embedded[0]!.transformer = 't9'
      it.lv.fedBy = 't8'
      it.livenings.at(-1)!.wire = 'lv-z'
    })
    expect(paths).toEqual(['$.transformers[0].clock', '$.embedded[0].transformer', '$.lv.fedBy', '$.livenings[8].wire'])
  })
})
