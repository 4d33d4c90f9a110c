/**
 * How long a test of a conductor counts for the crew: until it is unearthed, a switch is closed, the permit is given
 * back, or something came alive. Common practice, no source: what is not earthed counts as live.
 */
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import {
  actions,
  believe,
  drawScenario,
  runTimeline,
  startSite,
  type ConductorBelief,
  type Site,
} from '../../../src/engine'
import { readRun } from '../../../src/files/run/read'
import { marrowBend, marrowBendBase } from '../../support/marrowBend'

type Evidence = Site['evidence'][number]
type Clamp = Site['clamps'][number]

const start = startSite(marrowBend())
const [first, other] = start.scenario.conductors.map((each) => each.id)

const line = (at: number, of: string, by: Evidence['by'], says: string): Evidence => ({
  at,
  who: 'pw',
  of,
  by,
  says,
  values: {},
})
const test = (at: number): Evidence => line(at, first!, 'test', 'test.silent')
const knowing = (...evidence: readonly Evidence[]): Site => ({ ...start, time: 900, evidence })
const known = (site: Site, id = first): ConductorBelief => believe(site).conductors.find((each) => each.id === id)!

describe('a test of a conductor', () => {
  it('counts for that conductor alone', () => {
    const site = knowing(test(100))
    expect(known(site)).toMatchObject({ state: 'tested', lastTest: { at: 100 } })
    expect(known(site, other)).toMatchObject({ state: 'treat-as-live', lastTest: null })
  })

  it.each([
    ['its clamp is off with the stick', line(200, first!, 'do', 'did.unclamp')],
    ['its clamp is off by hand', line(200, first!, 'do', 'did.unclamp-by-hand')],
    ['a switch is closed', line(200, start.scenario.switches[0]!.id, 'do', 'did.close-switch')],
    ['a fuse carrier is put in', line(200, 't1', 'do', 'did.put-carriers-in')],
    ['a main switch on low voltage is closed', line(200, 't1', 'do', 'did.close-main')],
    ['the permit is given back', line(200, 'control', 'hear', 'control.permit-back')],
  ])('is over once %s, and counts again when done again', (_name, ends) => {
    expect(known(knowing(test(100), ends))).toMatchObject({ state: 'treat-as-live', lastTest: null })
    expect(known(knowing(ends, test(300)))).toMatchObject({ state: 'tested', lastTest: { at: 300 } })
  })

  it.each([
    ['the clamp of another conductor is off', line(200, other!, 'do', 'did.unclamp')],
    ['a switch is opened', line(200, start.scenario.switches[0]!.id, 'do', 'did.open-switch')],
    ['the control room did not take the permit back', line(200, 'control', 'hear', 'control.not-complete')],
  ])('goes on counting when %s', (_name, does) => {
    expect(known(knowing(test(100), does)).state).toBe('tested')
  })

  it('is over once something came alive', () => {
    const livening = { id: 'clash-b', at: 150, cleared: true, provedOff: true }
    expect(known({ ...knowing(test(100)), livening }).state).toBe('treat-as-live')
    expect(known({ ...knowing(test(200)), livening }).state).toBe('tested')
  })

  it('leaves a conductor with a clamp on it clamped', () => {
    const clamp: Clamp = { lead: 'E-07', end: '1', on: first!, turns: 3, brushed: true, tugged: true }
    const site = { ...knowing(test(100), line(200, 'control', 'hear', 'control.permit-back')), clamps: [clamp] }
    expect(known(site).state).toBe('clamped')
  })
})

it('at the end of a whole job every conductor counts as live', () => {
  const file = new URL('../../../scenarios/marrow-bend/runs/clean.json', import.meta.url)
  const recorded = readRun(readFileSync(file, 'utf8'), actions)
  if (!recorded.ok) throw new Error(JSON.stringify(recorded.issues))
  const { orders, seed, purpose } = recorded.value
  const { entries } = runTimeline(drawScenario(marrowBendBase(), seed, purpose), orders)
  const statesAfter = (last: number): readonly string[] =>
    believe(entries[last]!.after).conductors.map((each) => each.state)
  const lastOn = entries.findLastIndex((entry) => entry.order.do === 'clamp')
  expect(statesAfter(lastOn)).toEqual(['clamped', 'clamped', 'clamped'])
  const lastOff = entries.findLastIndex((entry) => entry.order.do.startsWith('unclamp') && entry.outcome === 'done')
  expect(statesAfter(lastOff)).toEqual(['treat-as-live', 'treat-as-live', 'treat-as-live'])
  expect(statesAfter(entries.length - 1)).toEqual(['treat-as-live', 'treat-as-live', 'treat-as-live'])
})
