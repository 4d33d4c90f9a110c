/** Contracts over the registers of the hazard engine: mechanisms of livening and exposure paths. */
import { describe, expect, it } from 'vitest'
import type { Touch } from '../../../src/engine/hazard/bodies/touch'
import { buildCircuit } from '../../../src/engine/hazard/circuit/buildCircuit'
import { fittedOf } from '../../../src/engine/hazard/circuit/fitted'
import { freshLeads } from '../../../src/engine/hazard/circuit/leads'
import { liveningLinks, mechanisms } from '../../../src/engine/hazard/circuit/livening'
import { exposurePaths, pathBetween } from '../../../src/engine/hazard/paths'
import { shockPathOf } from '../../../src/engine/hazard/paths/shockPathOf'
import { cachedGround } from '../../../src/engine/hazard/sweepCache'
import { factor } from '../../../src/engine/physics/network'
import type { Limb } from '../../../src/engine/site/contact'
import { feedersOf, liveningTraits } from '../../../src/engine/site/liveningTraits'
import { english } from '../../../src/text'
import { earthedSite, sharedCache } from './sites'

describe('mechanisms of livening', () => {
  const site = earthedSite()
  const { scenario } = site

  it('each is under its own kind, with rows of the procedure; the place knows the same kinds', () => {
    for (const [kind, mechanism] of Object.entries(mechanisms)) {
      expect(mechanism.kind).toBe(kind)
      expect(mechanism.rows.length, kind).toBeGreaterThan(0)
    }
    expect(Object.keys(liveningTraits).sort()).toEqual(Object.keys(mechanisms).sort())
  })

  it('each livening links its own feeder to the section by elements that the circuit can solve', () => {
    const fitted = fittedOf(site)
    const ground = cachedGround(sharedCache, scenario, fitted)
    for (const livening of scenario.livenings) {
      const links = liveningLinks(scenario, livening, fitted)
      expect(links.length, livening.id).toBe(livening.kind === 'clash' ? 1 : livening.kind === 'clash-two' ? 2 : 3)
      const feeders = feedersOf(scenario, livening)
      const circuit = buildCircuit(scenario, fitted, livening, ground, feeders, freshLeads)
      expect(circuit.links, livening.id).toEqual(links.map((it) => it.id))
      expect(factor(circuit).kind, livening.id).toBe('factored')
    }
  })
})

describe('exposure paths', () => {
  const touch = (limb: Limb, on: Touch['on'], isThroughStick = false): Touch => ({
    limb,
    on,
    isThroughStick,
    point: { kind: 'node', node: 'x' },
    series: 0,
    sharedSeries: null,
    lead: null,
    layers: [],
  })

  it('ids once, each with its row of the procedure', () => {
    expect(new Set(exposurePaths.map((it) => it.id)).size).toBe(exposurePaths.length)
    for (const path of exposurePaths) expect(path.rows.length, path.id).toBeGreaterThan(0)
  })

  it('each has its words', () => {
    for (const { id } of exposurePaths) expect(Object.keys(english)).toContain(`path.${id}`)
  })

  it.each([
    ['hand-hand', touch('left-hand', 'conductor'), touch('right-hand', 'conductor')],
    ['hand-hand', touch('left-hand', 'rod'), touch('right-hand', 'lead')],
    ['hand-metalwork', touch('left-hand', 'conductor'), touch('right-hand', 'metalwork')],
    ['hand-thigh', touch('left-hand', 'conductor'), touch('thigh', 'pole')],
    ['hand-thigh', touch('right-hand', 'lead'), touch('chest', 'pole')],
    ['hand-feet', touch('left-hand', 'conductor'), touch('left-foot', 'step-bolt')],
    ['hand-pole-feet', touch('left-hand', 'pole'), touch('left-foot', 'ground')],
    ['hand-lead-feet', touch('left-hand', 'lead'), touch('right-foot', 'ground')],
    ['low-voltage', touch('right-foot', 'lv-wire'), touch('left-hand', 'conductor')],
    ['stick', touch('left-hand', 'conductor', true), touch('thigh', 'pole')],
    ['handle-feet', touch('left-hand', 'handle'), touch('left-foot', 'ground')],
    ['pace', touch('left-foot', 'ground'), touch('right-foot', 'ground')],
    ['thigh-feet', touch('thigh', 'pole'), touch('right-foot', 'step-bolt')],
  ])('%s, either way round', (id, a, b) => {
    expect(pathBetween(a, b).id).toBe(id)
    expect(pathBetween(b, a).id).toBe(id)
    expect(pathBetween(a, b).limit).toBe('line-b')
  })

  it('shock paths of IEC 60479-1 Table 12 by limbs; the thigh counts as that hand to the feet', () => {
    expect(shockPathOf('left-hand', 'right-hand', false)).toBe('hand-hand')
    expect(shockPathOf('left-foot', 'left-hand', false)).toBe('left-hand-feet')
    expect(shockPathOf('right-hand', 'thigh', false)).toBe('right-hand-feet')
    expect(shockPathOf('left-hand', 'left-foot', true)).toBe('both-hands-feet')
    expect(shockPathOf('chest', 'left-hand', false)).toBe('chest-left-hand')
    expect(shockPathOf('chest', 'right-hand', false)).toBe('chest-right-hand')
    expect(shockPathOf('left-foot', 'right-foot', false)).toBe('foot-foot')
    expect(shockPathOf('chest', 'left-foot', false)).toBe('left-hand-feet')
  })
})
