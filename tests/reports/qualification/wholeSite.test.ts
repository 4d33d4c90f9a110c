// What a case of a whole site cannot be asked for is said, never answered with something else.

import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { qualifyCase, type FindScenarioText } from '../../../src/reports/qualification'

const findText: FindScenarioText = (place) =>
  place.startsWith('marrow-bend/') ? readFileSync(`scenarios/${place}`, 'utf8') : undefined

const inputs = { scenario: 'marrow-bend', run: 'clean', atS: 6430, livening: 'clash-b' }

function reasonsFor(changes: object, find?: FindScenarioText): readonly string[] {
  const expected = { clearedBy: 'earth-fault' }
  const item = { id: 'site', model: 'whole-site', source: 'none', inputs: { ...inputs, ...changes }, expected }
  return qualifyCase(item, find).reasons
}

describe('a case of a whole site', () => {
  it('passes with the scenario at hand, and says what is missing without it', () => {
    expect(reasonsFor({}, findText)).toEqual([])
    expect(reasonsFor({})).toEqual([
      'the model stopped: there is no marrow-bend/scenario.json among the scenarios here',
    ])
  })

  it.each([
    ['a part of the scenario that is not there', { set: { 'feeders.f9.voltageV': 1 } }, /no feeders\.f9\.voltageV/],
    ['a value that the scenario’s file may not have', { set: { horizonS: -1 } }, /\$\.horizonS: found -1/],
    ['a thing that is not fitted then', { without: [{ item: 'B-02' }] }, /B-02 is not fitted then/],
    ['a livening that the scenario does not have', { livening: 'flood' }, /flood/],
    ['a hand that nobody has', { touching: [{ person: 'pw', hand: 'third', kind: 'conductor', on: 'x' }] }, /third/],
  ])('is refused for %s', (_, changes, reason) => {
    expect(reasonsFor(changes, findText).join()).toMatch(reason)
  })
})
