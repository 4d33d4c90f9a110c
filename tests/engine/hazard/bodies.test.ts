/** Bodies on the circuit's ports: the star by hand, the settling of its voltage, layers, and the full circuit as check. */
import { describe, expect, it } from 'vitest'
import { answerBody } from '../../../src/engine/hazard/bodies/answerBody'
import { bodyPorts } from '../../../src/engine/hazard/bodies/bodyPorts'
import { feetAt, footTerminal } from '../../../src/engine/hazard/bodies/feet'
import type { Layer } from '../../../src/engine/hazard/bodies/layer'
import { throughStory } from '../../../src/engine/hazard/bodies/passage'
import { shareCurrent } from '../../../src/engine/hazard/bodies/shareCurrent'
import { solveBody, type BodyPorts } from '../../../src/engine/hazard/bodies/solveBody'
import { touchingBody, type Touch } from '../../../src/engine/hazard/bodies/touch'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import { lineOf, type LiveMoment } from '../../../src/engine/hazard/liven'
import type { LineStory } from '../../../src/engine/hazard/lineStory'
import { complex, magnitude, negate, scale, subtract, ZERO, type Complex } from '../../../src/engine/math/complex'
import { isUnsolvable, type Port } from '../../../src/engine/physics/network'
import { handToHandImpedance } from '../../../src/engine/physics/body'
import { insulationRating } from '../../../src/engine/physics/insulation'
import { electrodesId } from '../../../src/engine/hazard/circuit/nodes'
import type { Limb } from '../../../src/engine/site/contact'
import {
  bondOn,
  changed,
  coverOn,
  defect,
  earthedSite,
  exposureOf,
  labelled,
  leftHandOnB,
  momentOf,
  person,
  rodPlace,
  sharedCache,
  standsAt,
  storyOf,
  touching,
  inScenario,
  type Change,
} from './sites'

const skin = { percentile: 5, skin: 'dry' } as const

/** Stiff sources: no impedance in the circuit but a milliohm. */
function stiff(limbs: readonly Limb[], open: readonly number[]): BodyPorts {
  return {
    limbs,
    open: open.map((volt) => complex(volt)),
    transfer: limbs.map((_, i) => limbs.map((__, j) => complex(i === j ? 0.001 : 0))),
  }
}

function solved(ports: BodyPorts, layers: readonly (readonly Layer[])[] = ports.limbs.map(() => [])) {
  const answer = solveBody(ports, layers, skin, 'pw')
  if (isUnsolvable(answer)) throw new Error(answer.reason)
  return answer
}

function requireLine(moment: LiveMoment, livening = 'clash-b'): LineStory {
  const line = lineOf(moment.site, livening, declaredCorner, sharedCache)
  if (isUnsolvable(line)) throw new Error(line.reason)
  return line
}

describe('star of limbs (IEC 60479-1, four equal limbs, trunk neglected)', () => {
  it('hand to hand at 225 V is ZT = 775 Ω, 290 mA', () => {
    const { currents, bodyVoltage } = solved(stiff(['left-hand', 'right-hand'], [225, 0]))
    expect(bodyVoltage).toBeCloseTo(225, 2)
    expect(magnitude(currents[0]!)).toBeCloseTo(225 / 775, 4)
  })

  it('hand to both feet: 0.75 ZT at the voltage across the body', () => {
    const { currents, bodyVoltage } = solved(stiff(['left-hand', 'left-foot', 'right-foot'], [400, 0, 0]))
    expect(magnitude(currents[0]!)).toBeCloseTo(bodyVoltage / (0.75 * handToHandImpedance(bodyVoltage, 5, 'dry')), 6)
  })

  it('hand to thigh is one limb: half of ZT', () => {
    const { currents } = solved(stiff(['left-hand', 'thigh'], [5_000, 0]))
    expect(magnitude(currents[0]!)).toBeCloseTo(5_000 / (0.5 * 575), 1)
  })

  it('the impedance follows the voltage inside the layers, not the prospective one', () => {
    // 1000 V over 100 kΩ of boot: about 10 mA and 17 V across the body, so ZT stays at its 25 V value, 1750 Ω
    const boot: Layer = { kind: 'resistance', item: 'B', ohm: 100_000 }
    const { currents, bodyVoltage } = solved(stiff(['left-hand', 'left-foot'], [1_000, 0]), [[], [boot]])
    expect(magnitude(currents[0]!)).toBeCloseTo(1_000 / 101_750, 6)
    expect(bodyVoltage).toBeCloseTo((1_000 * 1_750) / 101_750, 3)
  })

  it('settles to 1e-9 of its own voltage', () => {
    for (const volt of [10, 30, 60, 90, 140, 210, 300, 450, 600, 900, 6_000]) {
      const source: BodyPorts = { ...stiff(['left-hand', 'left-foot', 'right-foot'], [volt, 0, 0]) }
      const { currents, bodyVoltage } = solved(source, [[], [{ kind: 'resistance', item: 'x', ohm: 400 }], []])
      const limb = 0.5 * handToHandImpedance(bodyVoltage, 5, 'dry')
      const across = currents.map((it) => scale(it, limb))
      const most = Math.max(...across.flatMap((a) => across.map((b) => magnitude(subtract(a, b)))))
      expect(Math.abs(most / bodyVoltage - 1), `${volt} V`).toBeLessThan(2e-9)
    }
  })

  it('values that are no numbers are no answer', () => {
    expect(solveBody(stiff(['left-hand', 'left-foot'], [Number.NaN, 0]), [[], []], skin, 'pw')).toMatchObject({
      kind: 'unsolvable',
      node: 'pw',
      reason: 'not-finite',
    })
  })

  it('a circuit that multiplies what it is loaded with has no settled body: no convergence, not some current', () => {
    // minus 1000 Ω is no site; it makes the voltage of any body larger than the one that was assumed for it
    const active = {
      ...stiff(['left-hand', 'right-hand'], [1_000, 0]),
      transfer: [
        [complex(-500), ZERO],
        [ZERO, complex(-500)],
      ],
    }
    const answer = solveBody({ ...active, open: [complex(100), ZERO] }, [[], []], skin, 'pw')
    expect(answer).toMatchObject({ kind: 'unsolvable', node: 'pw', reason: 'no-convergence' })
  })
})

describe('sharing over paths', () => {
  const touch = (limb: Limb, on: Touch['on']): Touch => ({
    limb,
    on,
    isThroughStick: false,
    point: { kind: 'node', node: 'x' },
    series: 0,
    sharedSeries: null,
    lead: null,
    layers: [],
  })

  it('one hand in, thigh and foot out: in proportion, the factor per pair', () => {
    const touches = [touch('right-hand', 'conductor'), touch('thigh', 'pole'), touch('left-foot', 'step-bolt')]
    const shared = shareCurrent(touches, [complex(10), complex(-7), complex(-3)])
    expect(shared).toMatchObject({ path: { id: 'hand-thigh' }, shockPath: 'right-hand-feet', bodyCurrent: 10 })
    expect(shared?.heartEquivalent).toBeCloseTo(8, 9)
  })

  it('hand to hand 0.4, both hands to feet 1.0, foot to foot 0.04 (IEC 60479-1 Table 12)', () => {
    const hands = [touch('left-hand', 'conductor'), touch('right-hand', 'conductor')]
    expect(shareCurrent(hands, [complex(1), complex(-1)])?.heartEquivalent).toBeCloseTo(0.4, 12)
    const both = shareCurrent([...hands, touch('left-foot', 'ground')], [complex(1), complex(1), complex(-2)])
    expect(both).toMatchObject({ shockPath: 'both-hands-feet', bodyCurrent: 2, heartEquivalent: 2 })
    const feet = [touch('left-foot', 'ground'), touch('right-foot', 'ground')]
    expect(shareCurrent(feet, [complex(0, 1), complex(0, -1)])).toMatchObject({
      path: { id: 'pace' },
      heartEquivalent: 0.04,
    })
  })

  it('contacts out of phase: 1 A at 0° and 1 A at 90° are 1.41 A through the body, not 2 A', () => {
    const touches = [touch('left-hand', 'conductor'), touch('right-hand', 'conductor'), touch('left-foot', 'ground')]
    const shared = shareCurrent(touches, [complex(1), complex(0, 1), complex(-1, -1)])
    expect(shared?.bodyCurrent).toBeCloseTo(Math.sqrt(2), 12)
    // three phases on three limbs: none carries more than 1 A, and 1 A is what comes in at once
    const three = [complex(1), complex(-0.5, Math.sqrt(3) / 2), complex(-0.5, -Math.sqrt(3) / 2)]
    expect(shareCurrent(touches, three)?.bodyCurrent).toBeCloseTo(1, 12)
  })

  it('nothing flows: no path', () => {
    expect(shareCurrent([touch('left-hand', 'conductor'), touch('thigh', 'pole')], [ZERO, ZERO])).toBeUndefined()
  })
})

describe('feet', () => {
  const moment = momentOf(earthedSite(standsAt('so', rodPlace.x, 5)))
  const { view } = requireLine(moment).phases[0]!

  it('stand 0.3 m apart, step 1.0 m, towards the rod that drives the gradient', () => {
    const [a, b] = feetAt(view.ground, view.electrodeCurrents, { x: rodPlace.x, y: 5 }, 'pace')
    expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeCloseTo(1, 9)
    // straight north of the only electrode that carries: along y, save what the floating others bend
    expect(Math.abs(a.y - b.y)).toBeGreaterThan(0.99)
    const [c, d] = feetAt(view.ground, view.electrodeCurrents, { x: rodPlace.x, y: 5 }, 'standing')
    expect(Math.hypot(c.x - d.x, c.y - d.y)).toBeCloseTo(0.3, 9)
  })

  it('closer to an electrode than both radii a foot stands on it', () => {
    expect(footTerminal(view.ground, 0.08, { x: rodPlace.x + 0.05, y: 0 })).toEqual({ kind: 'node', node: 'rod/R-1' })
    expect(footTerminal(view.ground, 0.08, { x: rodPlace.x + 0.1, y: 0 }).kind).toBe('ground')
  })

  it('a pace by hand: prospective voltage over two discs of ρ/4b, the limbs and their mutual', () => {
    const found = exposureOf(storyOf(moment), 'so')
    // two-layer ground under a disc of 8 cm: ρ/4b = 312 Ω and some; body flat at 1750 Ω below 25 V
    const low = found.prospectiveVoltage / (1_750 + 2 * 360)
    const high = found.prospectiveVoltage / (1_375 + 2 * 300)
    expect(found.bodyCurrent).toBeGreaterThan(low)
    expect(found.bodyCurrent).toBeLessThan(high)
  })
})

describe('the full circuit with everybody in it', () => {
  it('agrees with the bodies on their ports within 0.5 %', () => {
    const site = changed(
      earthedSite(bondOn, coverOn()),
      person('pic', { wears: [] }),
      standsAt('pic', 0, 6),
      standsAt('gw', -3, 1),
      defect('BT-42', 'nail-hole-left'),
    )
    const moment = momentOf(
      site,
      leftHandOnB,
      touching('gw', 'right-hand', { kind: 'lead', item: 'E-07', end: 'earth' }),
    )
    const { view } = requireLine(moment).phases[0]!
    const bodies = moment.bodies.map((body) => {
      const touching = touchingBody(site, site.scenario, body)
      const found = bodyPorts(site.scenario, view, touching.touches)
      if (isUnsolvable(found)) throw new Error(found.reason)
      const ported = found.ported.map((it) => {
        if (it.terminal.kind === 'loose') throw new Error(`${it.terminal.lead} is held`)
        return { ...it, terminal: it.terminal }
      })
      const ports = { ...found, ported }
      const layers = touching.touches.map((it) => it.layers)
      const solution = solveBody(ports, layers, site.scenario.body, body.person)
      if (isUnsolvable(solution)) throw new Error(solution.reason)
      return { ports, layers, solution }
    })
    const portOf = (terminal: (typeof bodies)[number]['ports']['ported'][number]['terminal']): Port => {
      if (terminal.kind === 'node') return terminal
      return { kind: 'ground', electrodes: electrodesId, mutual: terminal.mutual, self: 0 }
    }
    const injections = bodies.flatMap(({ ports, solution }) =>
      ports.ported.map(({ terminal }, i) => ({ port: portOf(terminal), current: negate(solution.currents[i]!) })),
    )
    const whole = view.factored().solveWith(injections)
    if (isUnsolvable(whole)) throw new Error(whole.reason)
    const seen = (terminal: Parameters<typeof portOf>[0]): Complex => {
      if (terminal.kind === 'node') return whole.voltage(terminal.node)
      return whole.electrodeCurrents(electrodesId).reduce((sum, current, k) => {
        return { re: sum.re + terminal.mutual[k]! * current.re, im: sum.im + terminal.mutual[k]! * current.im }
      }, ZERO)
    }
    let checked = 0
    for (const { ports, layers, solution } of bodies) {
      // the same body again, its sources now the whole circuit's voltages with its own drop put back
      const open = ports.ported.map(({ terminal }, i) => {
        const own = ports.ported.reduce<Complex>((sum, other, j) => {
          const ohm = view.transfer(terminal, other.terminal)
          if (isUnsolvable(ohm)) throw new Error(ohm.reason)
          const current = solution.currents[j]!
          return {
            re: sum.re + ohm.re * current.re - ohm.im * current.im,
            im: sum.im + ohm.re * current.im + ohm.im * current.re,
          }
        }, ZERO)
        const voltage = seen(terminal)
        return { re: voltage.re + own.re, im: voltage.im + own.im, i }
      })
      const again = solveBody({ ...ports, open }, layers, site.scenario.body, 'again')
      if (isUnsolvable(again)) throw new Error(again.reason)
      solution.currents.forEach((current, i) => {
        if (magnitude(current) < 1e-6) return
        checked += 1
        expect(Math.abs(magnitude(again.currents[i]!) / magnitude(current) - 1)).toBeLessThan(0.005)
      })
    }
    expect(checked).toBeGreaterThan(6)
  })
})

describe('layers', () => {
  const bolts = (...items: ReturnType<typeof defect>[]) => changed(earthedSite(bondOn, coverOn()), ...items)

  it('a boot on a bolt is ωε0·3·2e-3/5e-3 beside 100 MΩ: by hand to 1 %', () => {
    const site = changed(bolts(), (it) => ({ ...it, cover: null }))
    const moment = momentOf(site, leftHandOnB)
    const body = touchingBody(site, site.scenario, moment.bodies.find((it) => it.person === 'pw')!)
    const boot = body.touches.find((it) => it.limb === 'left-foot')!.layers[0]!
    if (boot.kind !== 'insulation') throw new Error('a sound boot insulates')
    expect(boot.admittance.im).toBeCloseTo((2 * Math.PI * 50 * 8.854e-12 * 3 * 0.002) / 0.005, 11)
    expect(1 / boot.admittance.re).toBeCloseTo(100e6, 0)
    expect(boot).toMatchObject({ maxUse: 7_500, proofTest: 10_000, failed: 0 })
  })

  it('boots of which one has a hole did not hold; sound ones did', () => {
    const shod = (...more: readonly Change[]) =>
      exposureOf(storyOf(momentOf(changed(earthedSite(bondOn), ...more), leftHandOnB)), 'pw')
    expect(shod().layer).toMatchObject({ item: 'BT-42', did: 'held' })
    expect(shod(defect('BT-42', 'nail-hole-left')).layer).toBeNull()
  })

  it('leather and no boots are the same to the network within 1 Ω: only insulating gear insulates', () => {
    const bare = exposureOf(storyOf(momentOf(changed(bolts(), person('pw', { wears: ['BT-42'] })), leftHandOnB)), 'pw')
    const leather = exposureOf(storyOf(momentOf(bolts(), leftHandOnB)), 'pw')
    expect(leather.bodyCurrent / bare.bodyCurrent).toBeCloseTo(1, 6)
  })

  it('a cover between use and proof voltage is solved both ways', () => {
    const found = exposureOf(storyOf(momentOf(changed(earthedSite(bondOn), coverOn('C-16')), leftHandOnB)), 'pw')
    expect(found.layer).toMatchObject({ item: 'C-16', did: 'may-fail' })
    expect(found.bodyCurrent).toBeLessThan(0.001)
    expect(found.ifItFails?.bodyCurrent).toBeGreaterThan(5)
  })

  it('a cover above its proof conducts, and the exposure is that of the bare pole', () => {
    const zeroZero = changed(earthedSite(bondOn), coverOn('C-16'), labelled('C-16', { class: '00' }))
    const story = storyOf(momentOf(zeroZero, leftHandOnB))
    const bare = storyOf(momentOf(earthedSite(bondOn), leftHandOnB))
    expect(story.failedItems).toEqual(['C-16'])
    expect(exposureOf(story, 'pw').bodyCurrent).toBeCloseTo(exposureOf(bare, 'pw').bodyCurrent, 6)
  })

  it('what failed before the run’s livening conducts from the start', () => {
    const burnt = changed(earthedSite(bondOn, coverOn()), (site) => ({
      ...site,
      items: { ...site.items, 'C-15': { ...site.items['C-15']!, failed: true } },
    }))
    expect(exposureOf(storyOf(momentOf(burnt, leftHandOnB)), 'pw').zone).toBe('AC-4.3')
  })

  it('the date on the label changes nothing: the same exposure to the bit', () => {
    const overdue = changed(bolts(), labelled('C-15', { due: '2001-01-01' }), labelled('BT-42', { due: '2001-01-01' }))
    expect(storyOf(momentOf(overdue, leftHandOnB)).exposures).toEqual(storyOf(momentOf(bolts(), leftHandOnB)).exposures)
  })

  it('one layer fails at a time, the one nearest to its proof voltage first', () => {
    // class 00 boots (proof 2.5 kV) beside a class 0 cover at the same 4.7 kV: boots are over proof, the cover may fail
    const site = changed(earthedSite(bondOn), coverOn('C-16'), labelled('BT-42', { class: '00' }))
    const line = requireLine(momentOf(site, leftHandOnB))
    const body = momentOf(site, leftHandOnB).bodies.find((it) => it.person === 'pw')!
    const answer = answerBody(site.scenario, line, touchingBody(site, site.scenario, body))
    if (isUnsolvable(answer)) throw new Error(answer.reason)
    expect(answer.failedItems).toEqual(['BT-42'])
    expect(answer.exposure?.layer).toMatchObject({ item: 'BT-42', did: 'failed' })
  })
})

describe('cascade, by hand', () => {
  const sheet = (item: string, farad: number, cls: '00' | '0' | '1'): Layer => {
    const { maxUse, proofTest } = insulationRating('glove', cls)
    return { kind: 'insulation', item, admittance: complex(0, 2 * Math.PI * 50 * farad), maxUse, proofTest, failed: 0 }
  }

  /** Glove and boot in series between 6 kV and earth: capacitances of 1 and 3 nF share it 3 to 1. */
  const twoLayers = (first: Layer, second: Layer) => {
    const moment = momentOf(earthedSite(bondOn, coverOn()), leftHandOnB)
    const line = requireLine(moment)
    const phase = { ...line.phases[0]!, view: { ...line.phases[0]!.view, ...stiffView } }
    const touches = [touchWith('left-hand', 'live', first), touchWith('left-foot', 'earth', second)]
    const passed = throughStory(moment.site.scenario, [phase], [{ person: 'pw', touches }], false)
    if (isUnsolvable(passed)) throw new Error(passed.reason)
    return passed[0]!
  }
  const stiffView = {
    has: () => true,
    openVoltage: (terminal: { kind: string; node?: string }) => complex(terminal.node === 'live' ? 6_000 : 0),
    transfer: (seen: unknown, driven: unknown) => (seen === driven ? complex(0.001) : ZERO),
  }
  const touchWith = (limb: Limb, node: string, layer: Layer): Touch => ({
    limb,
    on: 'conductor',
    isThroughStick: false,
    point: { kind: 'node', node },
    series: 0,
    sharedSeries: null,
    lead: null,
    layers: [layer],
  })

  it('4.5 kV on 1 nF and 1.5 kV on 3 nF: class 0 may fail, class 00 may fail, none does', () => {
    const { failed, mayFail, layer } = twoLayers(sheet('G', 1e-9, '0'), sheet('B', 3e-9, '00'))
    expect([...failed]).toEqual([])
    expect(mayFail).toBe(true)
    // what is told of is the layer that stands most: 6 kV · 3/(1 + 3)
    expect(layer).toMatchObject({ item: 'G', did: 'may-fail' })
    expect(layer!.voltage).toBeCloseTo(4_500, -1)
  })

  it('the glove is over its 2.5 kV first; then all 6 kV are on the boot, over its 5 kV: both are gone', () => {
    const { failed, states } = twoLayers(sheet('G', 1e-9, '00'), sheet('B', 3e-9, '0'))
    expect([...failed]).toEqual(['G left-hand', 'B left-foot'])
    // nothing is left but the body: 6 kV over 575 Ω
    expect(magnitude(states[0]!.solution.currents[0]!)).toBeCloseTo(6_000 / 575, 1)
  })

  it('the same, with a boot of class 1: it stands 6 kV, and its 3 nF carry 5.65 mA', () => {
    const { failed, mayFail, states } = twoLayers(sheet('G', 1e-9, '00'), sheet('B', 3e-9, '1'))
    expect([...failed]).toEqual(['G left-hand'])
    expect(mayFail).toBe(false)
    expect(magnitude(states[0]!.solution.currents[0]!)).toBeCloseTo(6_000 * 2 * Math.PI * 50 * 3e-9, 5)
  })

  it('two equal layers over their proof by as much: the first by name goes, the other then too', () => {
    const { failed } = twoLayers(sheet('Z', 1e-9, '00'), sheet('A', 1e-9, '00'))
    expect([...failed]).toEqual(['A left-foot', 'Z left-hand'])
  })
})

describe('dampness', () => {
  const wet: Change = inScenario(({ contact, weather }) => ({
    weather: { ...weather, rain: true },
    contact: { ...contact, cover: { ...contact.cover, wetLeakage: 200_000 }, wetStickLeakage: 1_000_000 },
  }))

  it('in the rain a cover leaks what is stated for it: 200 kΩ, so 4.7 kV send 23 mA', () => {
    const dry = exposureOf(storyOf(momentOf(earthedSite(bondOn, coverOn()), leftHandOnB)), 'pw')
    const rain = exposureOf(storyOf(momentOf(earthedSite(bondOn, coverOn(), wet), leftHandOnB)), 'pw')
    expect(rain.layer).toMatchObject({ did: 'held' })
    expect(rain.bodyCurrent).toBeCloseTo(rain.prospectiveVoltage / 200_000, 3)
    expect(rain.bodyCurrent).toBeGreaterThan(40 * dry.bodyCurrent)
  })

  it('rain alone changes nothing that states no wet leakage', () => {
    const raining = inScenario(({ weather }) => ({ weather: { ...weather, rain: true } }))
    const dry = storyOf(momentOf(earthedSite(bondOn, coverOn()), leftHandOnB))
    expect(storyOf(momentOf(earthedSite(bondOn, coverOn(), raining), leftHandOnB)).exposures).toEqual(dry.exposures)
  })

  it('a wet stick is what is stated for it', () => {
    const site = earthedSite(bondOn, wet)
    const body = { person: 'pw', contacts: [{ ...leftHandOnB.contact, through: ['S-11'] }] }
    expect(touchingBody(site, site.scenario, body).touches[0]).toMatchObject({ series: 1_000_000 })
  })
})

describe('touching loose metal', () => {
  it('a lead that hangs on nothing is no way for a current', () => {
    const site = earthedSite(bondOn, coverOn())
    const loose = touching('pw', 'right-hand', { kind: 'lead', item: 'E-08', end: '1' })
    const withIt = storyOf(momentOf(site, leftHandOnB, loose))
    expect(withIt.exposures).toEqual(storyOf(momentOf(site, leftHandOnB)).exposures)
  })
})
