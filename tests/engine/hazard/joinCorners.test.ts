/** One verdict over corners, by hand: who is open, who was reached in some corner only, and a layer that hides a current. */
import { describe, expect, it } from 'vitest'
import { answerBody } from '../../../src/engine/hazard/bodies/answerBody'
import { touchingBody } from '../../../src/engine/hazard/bodies/touch'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import type { Exposure } from '../../../src/engine/hazard/exposure'
import { joinCorners, type CornerAnswer } from '../../../src/engine/hazard/joinCorners'
import { lineOf } from '../../../src/engine/hazard/liven'
import { complex } from '../../../src/engine/math/complex'
import { isUnsolvable } from '../../../src/engine/physics/network'
import { earthedSite, leftHandOnB, momentOf, sharedCache } from './sites'

function exposed(person: string, judged: number): Exposure {
  return {
    ...{ person, path: 'pace', shockPath: 'foot-foot', prospectiveVoltage: 1, bodyVoltage: 1, bodyCurrent: judged },
    ...{ heartEquivalent: 0, duration: 1, cleared: true, zone: 'AC-1', limit: 1, judged, layer: null },
    ...{ beyondRange: false, shots: { count: 1, longest: 1, total: 1 } },
  }
}

const corner = (id: string, ...exposures: readonly Exposure[]): CornerAnswer => ({
  corner: id,
  isSolved: true,
  exposures,
})
const verdicts = (solved: readonly CornerAnswer[], ...open: readonly string[]) =>
  Object.fromEntries(joinCorners('clash-b', solved, new Set(open)).map((it) => [it.person, it.verdict]))

describe('corners joined', () => {
  it('one person’s missing corner leaves that person open, and nobody else', () => {
    const solved = [corner('declared', exposed('gw', 0.1), exposed('pw', 2)), corner('low', exposed('gw', 0.1))]
    expect(verdicts(solved, 'pw')).toEqual({ gw: 'below', pw: 'marginal' })
  })

  it('a line that has no answer in one corner leaves everybody open', () => {
    const solved = [corner('declared', exposed('gw', 0.1), exposed('pw', 2))]
    const open = { corner: 'low', isSolved: false, exposures: [] }
    expect(verdicts([...solved, open])).toEqual({ gw: 'marginal', pw: 'marginal' })
  })

  it('who is reached in some corner only is told of, with nothing in the others', () => {
    const solved = [corner('declared'), corner('low', exposed('gw', 3))]
    const [found] = joinCorners('clash-b', solved, new Set())
    expect(found).toMatchObject({ person: 'gw', verdict: 'marginal', ratios: { declared: 0, low: 3 } })
  })
})

describe('a layer that may fail and lets next to nothing through while it holds', () => {
  it('is told both ways: 5 kV over 1 pS is 5 nA, and through 0 Ω amperes', () => {
    const moment = momentOf(earthedSite(), leftHandOnB)
    const { site } = moment
    const line = lineOf(site, 'clash-b', declaredCorner, sharedCache)
    if (isUnsolvable(line)) throw new Error(line.node)
    const body = moment.bodies.find((it) => it.person === 'pw')!
    const touching = touchingBody(site, site.scenario, body)
    const rating = { maxUse: 1_000, proofTest: 10_000, failed: 0 }
    const thin = { kind: 'insulation', item: 'C-16', admittance: complex(0, 1e-12), ...rating } as const
    const touches = touching.touches
      .filter((it) => it.limb === 'left-hand' || it.limb === 'thigh')
      .map((it) => (it.limb === 'thigh' ? { ...it, layers: [thin] } : it))
    const answer = answerBody(site.scenario, line, { ...touching, touches })
    if (isUnsolvable(answer)) throw new Error(answer.node)
    expect(answer.exposure?.bodyCurrent).toBeLessThan(1e-8)
    expect(answer.exposure?.layer).toMatchObject({ item: 'C-16', did: 'may-fail' })
    expect(answer.exposure?.ifItFails?.bodyCurrent).toBeGreaterThan(5)
  })
})
