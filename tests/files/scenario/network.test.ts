/** Networks that a file may say: read with their units; the impossible refused, each fault with its path. */
import { describe, expect, it } from 'vitest'
import { readScenario } from '../../../src/files/scenario/read'
import { marrowBendText } from '../../support/marrowBend'

type Json = Record<string, unknown>
interface File {
  conductors: Json[]
  feeders: Json[]
  switches: Json[]
  livenings: Json[]
  parallels?: Json[]
  work: Json
}

const readWith = (change: (file: File) => void) => {
  const file = JSON.parse(marrowBendText()) as File
  change(file)
  return readScenario(JSON.stringify(file))
}
const issuesWith = (change: (file: File) => void) => {
  const read = readWith(change)
  return read.ok ? [] : read.issues
}
const pathsWith = (change: (file: File) => void) => [...new Set(issuesWith(change).map((it) => it.path))].sort()

const wire = (more: Json = {}): Json => ({
  id: 'neutral',
  xM: 0.3,
  heightM: 7.5,
  radiusM: 0.0045,
  gmrM: 0.0034,
  resistanceOhmPerM: 0.0006,
  earthEveryM: 100,
  earthResistanceOhm: 25,
  poleEarth: { at: { xM: 0, yM: 0.5 }, lengthM: 2, radiusM: 0.008 },
  ...more,
})

const beside = (more: Json = {}): Json => ({
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
  toM: 400,
  loadCurrentA: 150,
  faultCurrentA: 2000,
  faultTimeS: 0.5,
  ...more,
})

/** Both feeders of the section. */
const multiEarth =
  (one: Json = {}, other: Json = {}) =>
  ({ feeders }: File) => {
    feeders[0]!.neutral = { kind: 'solid' }
    feeders[1]!.neutral = { kind: 'solid' }
    feeders[0]!.neutralWire = wire(one)
    feeders[1]!.neutralWire = wire(other)
  }

/** Only phase B everywhere. */
const single = ({ conductors, feeders, livenings, work }: File) => {
  const keepB = (set: unknown) => (set as Json[]).filter((it) => it.phase === 'B')
  conductors.splice(0, 3, ...keepB(conductors))
  for (const feeder of feeders)
    Object.assign(feeder, { conductors: keepB(feeder.conductors), neutral: { kind: 'solid' } })
  const left = livenings.filter((it) => (it.phase ?? 'B') === 'B' && it.phases === undefined)
  livenings.splice(0, livenings.length, ...left)
  work.conductor = 'conductor-b'
}

/** Triggers and draws of the shipped scenario name livenings that a change has taken out: not what is asked here. */
const withoutDraws = (paths: readonly string[]) => paths.filter((it) => !/^\$\.(draws|triggers)/.test(it))

describe('neutral earthing', () => {
  it('reads a reactor and a coil with the capacitance of the network', () => {
    const read = readWith(({ feeders }) => {
      feeders[0]!.neutral = { kind: 'reactor', impedance: { resistanceOhm: 0.5, reactanceOhm: 12 } }
      feeders[1]!.neutral = { kind: 'arc-suppression-coil', tuning: 1, lossResistanceOhm: 600 }
      feeders[1]!.networkCapacitanceF = 4e-6
    })
    expect(read.ok ? [] : read.issues).toEqual([])
    if (!read.ok) return
    expect(read.value.feeders[0]!.neutral).toEqual({ kind: 'reactor', impedance: { re: 0.5, im: 12 } })
    expect(read.value.feeders[1]).toMatchObject({
      neutral: { kind: 'arc-suppression-coil', tuning: 1, lossResistance: 600 },
      networkCapacitance: 4e-6,
    })
  })

  it('refuses zero, negative and absurd ones, all at once, each with its range', () => {
    const issues = issuesWith(({ feeders }) => {
      feeders[0]!.neutral = { kind: 'reactor', impedance: { resistanceOhm: 0, reactanceOhm: 0 } }
      feeders[0]!.sourceImpedance = { resistanceOhm: 0, reactanceOhm: 0 }
      feeders[1]!.neutral = { kind: 'arc-suppression-coil', tuning: 0, lossResistanceOhm: -600 }
      feeders[1]!.networkCapacitanceF = -1e-6
      feeders[2]!.networkCapacitanceF = 1
      feeders[2]!.neutral = { kind: 'petersen' }
    })
    expect(issues.map((it) => it.path).sort()).toEqual([
      '$.feeders[0].neutral.impedance',
      '$.feeders[0].sourceImpedance',
      '$.feeders[1].networkCapacitanceF',
      '$.feeders[1].neutral.lossResistanceOhm',
      '$.feeders[1].neutral.tuning',
      '$.feeders[2].networkCapacitanceF',
      '$.feeders[2].neutral.kind',
    ])
    expect(issues.find((it) => it.path.endsWith('tuning'))?.allowed).toBe('a number from 0.1 to 10')
    expect(issues.find((it) => it.path.endsWith('kind'))?.allowed).toContain('arc-suppression-coil')
  })
})

describe('neutral wire', () => {
  it('is read from both ends of the section', () => {
    const read = readWith(multiEarth())
    expect(read.ok ? [] : read.issues).toEqual([])
    if (!read.ok) return
    const [f1, f2] = read.value.feeders
    expect(f1!.neutralWire).toEqual(f2!.neutralWire)
    expect(f1!.neutralWire).toMatchObject({ earthEvery: 100, poleEarth: { at: { x: 0, y: 0.5 }, length: 2 } })
  })

  it('is one wire: another make, or another place, at the other end is told', () => {
    expect(pathsWith(multiEarth({}, { earthResistanceOhm: 30 }))).toEqual(['$.feeders[1].neutralWire'])
  })

  it.each<[string, Json, string]>([
    ['an id of a conductor', { id: 'conductor-a' }, 'id'],
    ['the place of a conductor', { xM: 0, heightM: 8.5 }, 'xM'],
    ['a gmr above its radius', { gmrM: 0.02 }, 'gmrM'],
    ['no distance between earths', { earthEveryM: 0 }, 'earthEveryM'],
    ['an earth of nothing', { earthResistanceOhm: 0 }, 'earthResistanceOhm'],
    ['its earth in the pole', { poleEarth: { at: { xM: 0.1, yM: 0.1 }, lengthM: 2, radiusM: 0.008 } }, 'poleEarth.at'],
    ['its earth at the stay', { poleEarth: { at: { xM: 0, yM: -5 }, lengthM: 2, radiusM: 0.008 } }, 'poleEarth.at'],
  ])('refuses %s', (_, more, key) => {
    expect(pathsWith(multiEarth(more, more))).toContain(`$.feeders[0].neutralWire.${key}`)
  })

  it('more earths than can be solved are a clear refusal', () => {
    const issues = issuesWith(multiEarth({ earthEveryM: 10 }, { earthEveryM: 10 }))
    expect(issues.map((it) => it.path)).toEqual(['$.feeders[0].neutralWire.earthEveryM'])
    expect(issues[0]?.allowed).toContain('at most 400')
  })

  it('refuses one under an unearthed neutral, and one of a crossing feeder with the same id', () => {
    expect(
      pathsWith((file) => {
        multiEarth()(file)
        file.feeders[0]!.neutral = { kind: 'unearthed' }
        file.feeders[2]!.neutralWire = wire({ xM: -0.4 })
        file.feeders[2]!.neutral = { kind: 'solid' }
      }),
    ).toEqual(['$.feeders[0].neutralWire', '$.feeders[2].neutralWire.id'])
  })
})

describe('one and two conductors', () => {
  it('reads a single wire; refuses one without a way back', () => {
    expect(withoutDraws(pathsWith(single))).toEqual([])
    const paths = pathsWith((file) => {
      single(file)
      file.feeders[0]!.neutral = { kind: 'unearthed' }
    })
    expect(withoutDraws(paths)).toEqual(['$.feeders[0].neutral.kind'])
  })

  it('a phase twice, a feeder without a phase of the section, a blade and a livening on none', () => {
    const paths = pathsWith((file) => {
      file.conductors.pop()
      file.switches[0]!.hungBlades = ['C']
      file.feeders[1]!.conductors = [(file.feeders[1]!.conductors as Json[])[2]!]
      file.feeders[1]!.neutral = { kind: 'solid' }
    })
    expect(withoutDraws(paths)).toEqual(['$.livenings[2].phase', '$.switches[0].hungBlades[0]', '$.switches[1].feeder'])
    expect(pathsWith(({ feeders }) => void (feeders[2]!.conductors as Json[]).splice(0, 3))).toContain(
      '$.feeders[2].conductors',
    )
    expect(
      pathsWith(({ feeders }) => {
        const set = feeders[2]!.conductors as Json[]
        set.pop()
        set[1]!.phase = set[0]!.phase
      }),
    ).toContain('$.feeders[2].conductors')
  })
})

describe('circuits beside the section', () => {
  it('are read, and the livenings that they bring', () => {
    const read = readWith((file) => {
      multiEarth()(file)
      file.parallels = [beside()]
      file.livenings.push(
        { id: 'induced', kind: 'induction', parallel: 'p33', phase: 'A' },
        { id: 'displaced', kind: 'pick-up', parallel: 'p33', phase: 'B' },
        { id: 'raised', kind: 'neutral-raised', feeder: 'f2', phase: 'C', impedanceOhm: 1 },
      )
    })
    expect(read.ok ? [] : read.issues).toEqual([])
    if (!read.ok) return
    expect(read.value.parallels?.[0]).toMatchObject({ voltage: 33_000, from: -500, to: 400, faultTime: 0.5 })
    expect(read.value.livenings.map((it) => it.kind)).toContain('pick-up')
  })

  it.each<[string, Json, readonly string[]]>([
    ['beyond the section', { fromM: -700, toM: 500 }, ['$.parallels[0].fromM', '$.parallels[0].toM']],
    ['from its end to its beginning', { fromM: 300, toM: -300 }, ['$.parallels[0].toM']],
    ['with a negative load', { loadCurrentA: -1 }, ['$.parallels[0].loadCurrentA']],
    ['with a fault of no current', { faultCurrentA: 0 }, ['$.parallels[0].faultCurrentA']],
  ])('refuses one %s', (_, more, paths) => {
    expect(pathsWith((file) => void (file.parallels = [beside(more)]))).toEqual(paths)
  })

  it('refuses one on a conductor of the section, and ids that are there already', () => {
    const paths = pathsWith((file) => {
      const set = beside().conductors as Json[]
      file.parallels = [beside({ id: 'f1', conductors: [{ ...set[0], id: 'conductor-a', xM: 0, heightM: 8.5 }] })]
    })
    expect(paths).toEqual(['$.parallels[0].conductors[0].id', '$.parallels[0].conductors[0].xM', '$.parallels[0].id'])
  })
})

describe('livenings that could not happen', () => {
  it('are told, each at its own fault', () => {
    const issues = issuesWith((file) => {
      file.parallels = [beside({ faultCurrentA: undefined, conductors: [(beside().conductors as Json[])[0]!] })]
      file.livenings = [
        ...file.livenings,
        { id: 'one', kind: 'induction', parallel: 'p33', phase: 'B' },
        { id: 'two', kind: 'pick-up', parallel: 'p33', phase: 'A' },
        { id: 'three', kind: 'induction', parallel: 'p99', phase: 'A' },
        { id: 'four', kind: 'neutral-raised', feeder: 'f2', phase: 'A', impedanceOhm: 1 },
        { id: 'five', kind: 'coil-fed', switch: 'switch-27', phase: 'A' },
      ]
    })
    const n = issues.map((it) => it.path.replace(/livenings\[(\d+)\]/, (_, k) => `livenings[${Number(k) - 6}]`))
    expect(n.sort()).toEqual([
      '$.livenings[0].parallel',
      '$.livenings[0].phase',
      '$.livenings[1].parallel',
      '$.livenings[2].parallel',
      '$.livenings[3].feeder',
      '$.livenings[4].switch',
    ])
  })
})
