// What is left of a pack's reason where there is no finding: whole clauses, never a gap.

import { expect, test } from 'vitest'
import { generalPart } from '../../src/text'

test.each([
  ['Wire cuts.', 'Wire cuts.'],
  ['A free end is in the hand: {on:thing} was not clamped.', 'A free end is in the hand.'],
  ['{item:item} was still out, {count} in all: one lead left up is a fault.', 'One lead left up is a fault.'],
  [
    'One hung blade leaves one phase live; {member:thing} had not been looked at. Looking finds it.',
    'One hung blade leaves one phase live. Looking finds it.',
  ],
  ['Right is “{right:choice}”.', ''],
])('%s', (sentence, left) => {
  expect(generalPart(sentence)).toBe(left)
})
