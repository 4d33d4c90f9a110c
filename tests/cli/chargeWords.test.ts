/** A charge in words: ½CV² and V·exp(-t/RC) by hand. */
import { expect, it } from 'vitest'
import { chargeLines } from '../../src/cli/chargeWords'
import { marrowBend } from '../support/marrowBend'

it('a bank of 10 µF with 6 MΩ is at 8.98 kV, a minute on at 1/e of it', () => {
  const bank = {
    id: 'bank',
    kind: 'stored-charge',
    capacitance: 1e-5,
    voltage: 11_000,
    phases: ['A'],
    discharge: 6e6,
  } as const
  const lines = chargeLines({ ...marrowBend(1), livenings: [bank] }, 'bank')
  expect(lines).toHaveLength(3)
  // 8 981 V and 403 J; 3 304 V and 54.6 J; after five minutes 60.5 V and 0.02 J
  expect(lines[0]).toMatch(/403 J$/)
  expect(lines[1]).toMatch(/55 J$/)
  expect(lines[2]).toMatch(/ 0 J$/)
  expect(chargeLines(marrowBend(1), 'clash-b')).toEqual([])
})
