/** Down on one knee at the rod: foot and bare knee 0.5 m apart, a hand on what is raised. */
import { describe, expect, it } from 'vitest'
import { kneeling } from '../../../src/engine/actions/touching'
import { answerBody } from '../../../src/engine/hazard/bodies/answerBody'
import { feetAt } from '../../../src/engine/hazard/bodies/feet'
import { solveBody } from '../../../src/engine/hazard/bodies/solveBody'
import { touchingBody } from '../../../src/engine/hazard/bodies/touch'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import { lineOf } from '../../../src/engine/hazard/liven'
import { complex, magnitude } from '../../../src/engine/math/complex'
import { isUnsolvable } from '../../../src/engine/physics/network'
import type { Site } from '../../../src/engine/site/site'
import {
  bondOn,
  coverOn,
  earthedSite,
  exposureOf,
  momentOf,
  person,
  rodPlace,
  sharedCache,
  standsAt,
  storyOf,
  touching,
} from './sites'

const onLead = touching('gw', 'right-hand', { kind: 'lead', item: 'E-07', end: 'earth' })
const beside = earthedSite(
  bondOn,
  coverOn(),
  standsAt('gw', rodPlace.x, 0.6),
  person('gw', {
    place: { kind: 'ground', at: { x: rodPlace.x, y: 0.6 } },
    wears: ['BT-43'],
  }),
)

function lineAt(site: Site) {
  const line = lineOf(site, 'clash-b', declaredCorner, sharedCache)
  if (isUnsolvable(line)) throw new Error(line.reason)
  return line
}

describe('kneeling', () => {
  it('takes the right foot off the ground, keeps the boot on the left one and leaves the knee bare', () => {
    const { bodies } = momentOf(beside, ...kneeling(beside, 'gw'), onLead)
    const { contacts } = bodies.find((it) => it.person === 'gw')!
    expect(contacts.map((it) => it.limb).sort()).toEqual(['knee', 'left-foot', 'right-hand'])
    expect(contacts.find((it) => it.limb === 'left-foot')!.through).toEqual(['BT-43'])
    expect(contacts.find((it) => it.limb === 'knee')!.through).toEqual([])
  })

  it('sets foot and knee 0.5 m apart along the steepest line, the knee on the lower side', () => {
    const { view } = lineAt(beside).phases[0]!
    const [foot, knee] = feetAt(view.ground, view.electrodeCurrents, { x: rodPlace.x, y: 0.6 }, 'kneeling')
    expect(Math.hypot(foot.x - knee.x, foot.y - knee.y)).toBeCloseTo(0.5, 9)
    const at = (point: typeof foot): number => magnitude(view.ground.system.potentialAt(point, view.electrodeCurrents))
    expect(at(knee)).toBeLessThan(at(foot))
  })

  it('hand to knee is one limb by hand: half of 575 Ω at 5 kV, as careful as hand to thigh', () => {
    const ports = {
      limbs: ['right-hand', 'knee'] as const,
      open: [complex(5_000), complex(0)],
      transfer: [
        [complex(0.001), complex(0)],
        [complex(0), complex(0.001)],
      ],
    }
    const solved = solveBody(ports, [[], []], { percentile: 5, skin: 'dry' }, 'gw')
    if (isUnsolvable(solved)) throw new Error(solved.reason)
    expect(magnitude(solved.currents[0]!)).toBeCloseTo(5_000 / (0.5 * 575), 1)
  })

  it('a hand on the earthed lead: boots hold for who stands, the bare knee is fatal for who kneels', () => {
    const standing = storyOf(momentOf(beside, onLead)).exposures.find((it) => it.person === 'gw')
    const moment = momentOf(beside, ...kneeling(beside, 'gw'), onLead)
    const down = exposureOf(storyOf(moment), 'gw')
    expect(standing?.bodyCurrent ?? 0).toBeLessThan(0.005)
    expect(down).toMatchObject({ path: 'hand-lead-feet', shockPath: 'right-hand-feet', zone: 'AC-4.3' })
    // by hand: what the lead stands above the ground there, over half a body at its asymptote and a disc of ρ/4b = 312 Ω and some
    const body = touchingBody(beside, beside.scenario, moment.bodies.find((it) => it.person === 'gw')!)
    const alone = answerBody(beside.scenario, lineAt(beside), body)
    if (isUnsolvable(alone) || alone.exposure === null) throw new Error('a current by the knee')
    const { prospectiveVoltage, bodyCurrent } = alone.exposure
    expect(bodyCurrent).toBeGreaterThan(prospectiveVoltage / (0.5 * 700 + 450 + 90))
    expect(bodyCurrent).toBeLessThan(prospectiveVoltage / (0.5 * 575 + 300))
  })
})
