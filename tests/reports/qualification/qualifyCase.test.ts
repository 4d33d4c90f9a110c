import { describe, expect, it } from 'vitest'
import { qualificationLines, qualifyCase, type QualificationCase } from '../../../src/reports/qualification'

/** 100 V over 10 ohm, lagging 30 degrees: 10 A by Ohm's law. */
const sound: QualificationCase = {
  id: 'ohm',
  model: 'network',
  source: "Ohm's law",
  inputs: {
    frequencyHz: 50,
    elements: [
      { kind: 'voltage', from: 'pole.base', to: '0', volt: 100, angleDeg: -30 },
      { kind: 'resistor', from: 'pole.base', to: '0', ohm: 10 },
    ],
  },
  expected: { 'voltageV.pole.base': 100, 'angleDeg.pole.base': 330, 'currentA.1': 10 },
  tolerance: { absolute: 0.001 },
}

const reasons = (changes: Partial<QualificationCase>) => qualifyCase({ ...sound, ...changes }).reasons

const relay: QualificationCase = {
  id: 'relay',
  model: 'protection',
  source: 'pole of the curve equation',
  inputs: { curve: 'iec-standard-inverse', pickupA: 100, multiplier: 1, currentA: 100 },
  expected: { timeS: 'never' },
}

describe('a case', () => {
  it('passes when every value is met, a node with a dot and an angle modulo 360 included', () => {
    expect(qualifyCase(sound)).toMatchObject({ id: 'ohm', model: 'network', passed: true, reasons: [] })
  })

  it('shows what was expected beside what was got', () => {
    const { values } = qualifyCase({ ...sound, expected: { 'currentA.1': 11, 'currentA.7': 10 } })
    const tolerance = { absolute: 0.001 }
    expect(values).toEqual([
      { path: 'currentA.1', expected: 11, tolerance, got: expect.closeTo(10, 9), isMet: false },
      { path: 'currentA.7', expected: 10, tolerance, got: undefined, isMet: false },
    ])
  })

  it('fails on a wrong expectation and says what was got', () => {
    expect(reasons({ expected: { 'currentA.1': 11 } })).toEqual(['currentA.1: expected 11 ± 0.001, got 10'])
  })

  it('fails on a model that nobody knows', () => {
    expect(reasons({ model: 'crystal-ball' })[0]).toMatch(
      /^no model is called crystal-ball; the models are body-impedance/,
    )
  })

  it('fails on an expected path that the model does not give, or that holds several values', () => {
    expect(reasons({ expected: { 'currentA.7': 10 } })).toEqual(['currentA.7: the model gives no such value'])
    expect(reasons({ expected: { constructor: 10 } })).toEqual(['constructor: the model gives no such value'])
    expect(reasons({ expected: { currentA: 10 } })).toEqual(['currentA: the model gives several values here: 0, 1'])
  })

  it('fails when it expects nothing', () => {
    expect(reasons({ expected: {} })).toHaveLength(1)
  })

  it('fails on a number without a tolerance of its own', () => {
    expect(reasons({ tolerance: undefined })).toHaveLength(3)
    expect(reasons({ tolerance: { 'currentA.1': { relative: 0.1 } } })).toEqual([
      'voltageV.pole.base: no tolerance is given for this number',
      'angleDeg.pole.base: no tolerance is given for this number',
    ])
  })

  it('takes either tolerance, for all or per path', () => {
    expect(reasons({ expected: { 'currentA.1': 10.5 }, tolerance: { relative: 0.05, absolute: 0.1 } })).toEqual([])
    expect(reasons({ expected: { 'currentA.1': 10.5 }, tolerance: { relative: 0.001, absolute: 0.5 } })).toEqual([])
    expect(reasons({ expected: { 'currentA.1': 10.5 }, tolerance: { 'currentA.1': { absolute: 0.6 } } })).toEqual([])
    expect(reasons({ expected: { 'currentA.1': 10.5 }, tolerance: { relative: 0.01, absolute: 0.1 } })).toHaveLength(1)
  })

  it('takes an expected 0 and an angle only with an absolute tolerance', () => {
    expect(reasons({ expected: { 'voltageV.0': 0 }, tolerance: { relative: 0.1 } })).toEqual([
      'voltageV.0: an expected 0 needs an absolute tolerance',
    ])
    expect(reasons({ expected: { 'voltageV.0': 0 } })).toEqual([])
    expect(reasons({ expected: { 'angleDeg.pole.base': -30 }, tolerance: { relative: 0.1 } })).toEqual([
      'angleDeg.pole.base: an angle needs an absolute tolerance',
    ])
    expect(reasons({ expected: { 'angleDeg.pole.base': 689.9 }, tolerance: { absolute: 0.2 } })).toEqual([])
  })

  it('compares never exactly, and never with a number', () => {
    expect(qualifyCase(relay).passed).toBe(true)
    expect(qualifyCase({ ...relay, expected: { timeS: 60 }, tolerance: { relative: 0.5 } }).reasons).toEqual([
      'timeS: expected 60, got never',
    ])
    expect(qualifyCase({ ...relay, inputs: { ...relay.inputs, currentA: 200 } }).passed).toBe(false)
  })

  it('fails with every input that the model cannot take', () => {
    const { inputs } = relay
    expect(
      qualifyCase({ ...relay, inputs: { ...inputs, curve: 'straight', pickupA: 0, amps: 3, multiplier: '1' } }).reasons,
    ).toEqual([
      expect.stringMatching(/^curve: expected one of iec-standard-inverse, .*, got "straight"$/),
      'pickupA: expected a finite number above 0, got 0',
      'multiplier: expected a finite number of at least 0, got "1"',
      'amps: unknown here',
    ])
    expect(qualifyCase({ ...relay, inputs: { ...inputs, currentA: Number.POSITIVE_INFINITY } }).passed).toBe(false)
    expect(qualifyCase({ ...relay, inputs: {} }).reasons).toHaveLength(4)
  })

  it('fails with the reason where the circuit has no answer', () => {
    const elements = [
      { kind: 'resistor', from: 'a', to: 'b', ohm: 1 },
      { kind: 'current', from: 'a', to: 'b', amp: 1 },
    ]
    expect(reasons({ inputs: { frequencyHz: 50, elements } })[0]).toMatch(/^not solvable at node [ab]: floating$/)
  })

  it('fails where the inputs make no sense together', () => {
    const electrode = { id: 'r', kind: 'rod', xM: 0, yM: 0, lengthM: 3, radiusM: 0.008, currentA: 1 }
    const inputs = { soil: { layers: [{ resistivityOhmM: 100 }] }, electrodes: [electrode, { ...electrode, id: 's' }] }
    expect(qualifyCase({ ...sound, model: 'electrode-system', inputs }).reasons[0]).toMatch(
      /^the model stopped: expected a gap/,
    )
  })
})

describe('the report', () => {
  it('gives a line per case and ends with the totals', () => {
    const results = [qualifyCase(sound), qualifyCase({ ...relay, expected: { timeS: 'soon' } })]
    expect(qualificationLines(results)).toEqual([
      "passed  ohm  network  Ohm's law",
      'failed  relay  protection  timeS: expected soon, got never  pole of the curve equation',
      '1 passed, 1 failed',
    ])
  })
})
