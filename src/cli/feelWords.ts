/**
 * `expose --feel pace:x,y`: a pace from there in its worst direction; `touch:x,y`: a hand on whatever is in reach and both
 * feet there; `hands:conductor-a,arm`: two hands on two things. Metres east and north of the pole. A bare body.
 */
import {
  type Exposure,
  type Feelers,
  type Moment,
  type Unsolvable,
  declaredCorner,
  feel,
  handholds,
  isUnsolvable,
} from '../engine'
import { exposureFile } from '../files/result/exposureFile'
import { feltWords, say, verdictWords, type Speaker } from '../text'
import { UnusableInput } from './input'
import { wordFor } from './words'

interface Felt {
  readonly livening: string
  readonly feelers: Feelers
  readonly exposure: Exposure | null | Unsolvable
}

/** As far as the app's feelers go, metres. */
const farthest = 100

/** @throws UnusableInput */
export function readFeelers(moment: Moment, text: string): Feelers {
  const [kind, rest = ''] = text.split(':')
  const parts = rest.split(',').map((it) => it.trim())
  if (kind === 'hands') return handsOn(moment, text, parts)
  const [x = NaN, y = NaN] = parts.map((it) => (it === '' ? NaN : Number(it)))
  const isPlace = parts.length === 2 && Math.abs(x) <= farthest && Math.abs(y) <= farthest
  if ((kind === 'pace' || kind === 'touch') && isPlace) return { kind, at: { x, y } }
  throw new UnusableInput([
    `--feel: found ${text}; allowed: pace:x,y or touch:x,y in metres, ${farthest} at most, or hands:a,b`,
  ])
}

function handsOn(moment: Moment, text: string, [left = '', right = '', ...more]: readonly string[]): Feelers {
  const known = handholds(moment.site)
  if (known.includes(left) && known.includes(right) && more.length === 0) return { kind: 'hands', on: [left, right] }
  throw new UnusableInput([`--feel: found ${text}; allowed: hands:a,b with two of ${known.join(', ')}`])
}

export function feelAt(moment: Moment, livening: string, feelers: Feelers): Felt {
  return { livening, feelers, exposure: feel(moment, livening, declaredCorner, feelers) }
}

export function feltLine({ livening, feelers, exposure }: Felt, speaker: Speaker): string {
  const name = wordFor(speaker, 'livening', livening)
  if (exposure === null) return `${name}: ${feltWords(feelers.kind, null)}`
  if (isUnsolvable(exposure))
    return `${name}: cannot be solved (${exposure.node}: ${say(`unsolved.${exposure.reason}`)})`
  return `${name}: ${feltWords(feelers.kind, exposure)} ${verdictWords(exposure)}`
}

export const feltFile = ({ livening, feelers, exposure }: Felt): Readonly<Record<string, unknown>> => ({
  livening,
  ...(feelers.kind === 'hands'
    ? { feel: feelers.kind, on: feelers.on }
    : { feel: feelers.kind, xM: feelers.at.x, yM: feelers.at.y }),
  exposure: exposure === null || isUnsolvable(exposure) ? exposure : exposureFile(exposure),
})
