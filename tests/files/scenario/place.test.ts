/** Poles of other kinds, metal on pole and ground, and the livenings that need them, as a file: read, or refused with all issues. */
import { describe, expect, it } from 'vitest'
import type { Issue } from '../../../src/files/issue'
import { readScenario } from '../../../src/files/scenario/read'
import { marrowBendText } from '../../support/marrowBend'

type Json = Record<string, unknown>
type Change = (file: Json) => Json

const file = (): Json => JSON.parse(marrowBendText()) as Json
const issuesOf = (change: Change): readonly Issue[] => {
  const read = readScenario(JSON.stringify(change(file())))
  return read.ok ? [] : read.issues
}

const poleOf = (change: (pole: Json) => Json): Change => {
  return (it) => ({ ...it, pole: change(it.pole as Json) })
}
const withoutCage = ({ cageRadiusM: _r, concreteCoverM: _c, concreteResistivityOhmM: _o, ...pole }: Json): Json => pole
const wood = { kind: 'wood', moisture: 'damp', treatment: 'oil', surface: 'dry', arm: 'steel' }
const grounds = [
  {
    id: 'paddock',
    kind: 'fence',
    posts: [
      { xM: -6, yM: 0 },
      { xM: -12, yM: 0 },
    ],
    postDepthM: 0.6,
    postRadiusM: 0.02,
    joins: { to: 'stay-lower', resistanceOhm: 10 },
  },
  { id: 'next-pole', kind: 'earth', at: { xM: 6, yM: 8 }, resistanceOhm: 10 },
  { id: 'water', kind: 'pipe', resistanceOhm: 5, points: [{ xM: 40, yM: 30 }] },
]
const truck = {
  tyresOhm: 1_000_000,
  outriggers: [{ offset: { xM: 1, yM: 2 }, radiusM: 0.2 }],
  boom: { leakageOhm: 1e7, linerOhm: 5e7 },
}
const alsoLivened = (...more: Json[]): Change => {
  return (it) => ({ ...it, livenings: [...(it.livenings as Json[]), ...more] })
}
const onPhase = { feeder: 'fx', phase: 'B', impedanceOhm: 1 }

describe('reads', () => {
  it.each<[string, Change]>([
    ['a wooden pole', poleOf((pole) => ({ ...withoutCage(pole), ...wood }))],
    ['a measured wooden pole', poleOf((pole) => ({ ...withoutCage(pole), ...wood, resistanceOhmPerM: 12_000 }))],
    ['a steel pole', poleOf((pole) => ({ ...withoutCage(pole), kind: 'steel' }))],
    ['a double pole', poleOf((pole) => ({ ...pole, secondLeg: { at: { xM: 3, yM: 2 }, armFixingOhm: 1_000 } }))],
    ['an earth cast in', poleOf((pole) => ({ ...pole, integralEarth: { terminalOhm: 0.01, heightM: 8.3 } }))],
    [
      'metal, ground, truck, livestock, rope, handle',
      (it) => ({
        ...it,
        metalwork: [
          { id: 'band', kind: 'band', heightM: 6.5, on: 'pole', fixingOhm: 100 },
          { id: 'lamp', kind: 'lamp-bracket', heightM: 8, on: 'lv-n', fixingOhm: 0.1, earthOhm: 10 },
        ],
        grounds,
        truck,
        livestock: { paceM: 1.6, limitV: 25 },
        contact: { ...(it.contact as Json), rope: { dryOhmPerM: 1e9, wetOhmPerM: 50_000 } },
        switches: (it.switches as Json[]).map((at) => ({ ...at, handleEarthOhm: 20 })),
      }),
    ],
  ])('%s', (_, change) => {
    expect(issuesOf(change)).toEqual([])
  })

  it('each new way to come alive, with what it needs', () => {
    const change = alsoLivened(
      { id: 'e1', kind: 'blade-shut', switch: 'switch-27', phase: 'A' },
      { id: 'e2', kind: 'remote-close', switch: 'switch-31' },
      { id: 'e3', kind: 'other-crew-closes', switch: 'switch-27' },
      { id: 'e4', kind: 'conductor-falls', ...onPhase, onto: 'conductor-a', at: 'pole' },
      { id: 'e5', kind: 'jumper-back', ...onPhase },
      { id: 'e6', kind: 'conductor-down', ...onPhase, thing: 'next-pole' },
      { id: 'e7', kind: 'neighbour-fault', ...onPhase, thing: 'next-pole' },
      { id: 'e8', kind: 'boom-touches', ...onPhase },
      { id: 'e9', kind: 'handle-live', switch: 'switch-27', phase: 'C', impedanceOhm: 1 },
      { id: 'e10', kind: 'lightning' },
      { id: 'e11', kind: 'stored-charge', capacitanceF: 1e-5, voltageV: 11_000, phases: ['A', 'B'], dischargeOhm: 1e6 },
    )
    expect(
      issuesOf((it) => ({
        ...change(it),
        grounds,
        truck,
        switches: (it.switches as Json[]).map((at) => ({ ...at, handleEarthOhm: 20 })),
      })),
    ).toEqual([])
  })
})

describe('refuses', () => {
  const pathsOf = (change: Change): string[] => issuesOf(change).map((it) => it.path)

  it('a wooden pole with a cage, or one without its moisture', () => {
    expect(pathsOf(poleOf((pole) => ({ ...pole, ...wood })))).toContain('$.pole.cageRadiusM')
    expect(pathsOf(poleOf((pole) => ({ ...withoutCage(pole), ...wood, moisture: undefined })))).toEqual([
      '$.pole.moisture',
    ])
    expect(pathsOf(poleOf((pole) => ({ ...pole, kind: 'glass' })))).toEqual(['$.pole.kind'])
  })

  it('what is fixed to nothing, hangs above the pole, or has an id twice', () => {
    const band = { id: 'band', kind: 'band', heightM: 6.5, on: 'pole', fixingOhm: 100 }
    expect(
      pathsOf((it) => ({
        ...it,
        metalwork: [band, { ...band, on: 'nowhere' }, { ...band, id: 'high', heightM: 29 }],
        grounds: [{ ...grounds[0]!, joins: { to: 'moon', resistanceOhm: 1 } }],
      })).sort(),
    ).toEqual(['$.grounds[0].joins.to', '$.metalwork[1].id', '$.metalwork[1].on', '$.metalwork[2].heightM'])
  })

  it('two things in one place of the soil: a post at the pole, an earth at the anchor, a leg on a leg', () => {
    const { anchor } = file().stay as { anchor: Json }
    expect(
      pathsOf((it) => ({
        ...poleOf((pole) => ({ ...pole, secondLeg: { at: { xM: 0.1, yM: 0 }, armFixingOhm: 1 } }))(it),
        grounds: [
          { ...grounds[0]!, posts: [{ xM: 0, yM: 0.2 }] },
          { ...grounds[1]!, at: anchor },
        ],
      })).sort(),
    ).toEqual(['$.grounds[0].posts[0]', '$.grounds[1].at', '$.pole.secondLeg.at'])
  })

  it('a livening without what it needs: truck, earth, handle, remote operation, conductor', () => {
    const change = alsoLivened(
      { id: 'e1', kind: 'boom-touches', ...onPhase },
      { id: 'e2', kind: 'conductor-down', ...onPhase, thing: 'next-pole' },
      { id: 'e3', kind: 'handle-live', switch: 'switch-27', phase: 'C', impedanceOhm: 1 },
      { id: 'e4', kind: 'remote-close', switch: 'switch-27' },
      { id: 'e5', kind: 'conductor-falls', ...onPhase, onto: 'conductor-d', at: 'pole' },
    )
    const first = (file().livenings as Json[]).length
    expect(pathsOf(change)).toEqual([
      `$.livenings[${first}].kind`,
      `$.livenings[${first + 1}].thing`,
      `$.livenings[${first + 2}].switch`,
      `$.livenings[${first + 3}].switch`,
      `$.livenings[${first + 4}].onto`,
    ])
  })
})
