// A verdict is told by a word and by strokes, so that its colour may be lost.

import { expect, test } from 'vitest'
import { english } from '../../../src/text'
import type { Exposure } from '../../../src/engine'
import { strokesOf } from '../../../src/app/panels/livening/verdicts'

const zones = ['AC-1', 'AC-2', 'AC-3', 'AC-4.1', 'AC-4.2', 'AC-4.3'] as const

test('six verdicts, six words, six marks', () => {
  const strokes = zones.map((zone) => strokesOf({ zone } as Exposure))
  expect(new Set(strokes).size).toBe(zones.length)
  // Worse is more strokes.
  expect([...strokes].sort((a, b) => a - b)).toEqual(strokes)
  expect(new Set(zones.map((zone) => english[`zone.${zone}`])).size).toBe(zones.length)
})
