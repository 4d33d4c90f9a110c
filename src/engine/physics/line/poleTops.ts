/**
 * How conductors sit on a pole: metres across from the pole's axis and metres below (negative: above) its arm. Usual
 * medium-voltage spacings; common practice, no source. An earth wire runs above, an underslung neutral below.
 */
import type { LinePlace } from './conductor'

export interface PoleTop {
  readonly phases: readonly [Seat, Seat, Seat]
  readonly earthWire?: Seat
  readonly neutral?: Seat
}

interface Seat {
  readonly across: number
  readonly below: number
}

const flat = [seat(-1, 0), seat(0, 0), seat(1, 0)] as const
const delta = [seat(-0.9, 0), seat(0, -0.9), seat(0.9, 0)] as const
const vertical = [seat(0.3, 0), seat(0.3, 1), seat(0.3, 2)] as const

export const poleTops = {
  flat: { phases: flat },
  'flat-earth-wire': { phases: flat, earthWire: seat(0, -1.5) },
  'flat-neutral': { phases: flat, neutral: seat(0.2, 1.5) },
  delta: { phases: delta },
  'delta-neutral': { phases: delta, neutral: seat(0.2, 1.5) },
  vertical: { phases: vertical },
  'vertical-earth-wire': { phases: vertical, earthWire: seat(0, -1.5) },
} as const satisfies Readonly<Record<string, PoleTop>>

export type PoleTopName = keyof typeof poleTops

/**
 * Places above the ground, phases first, then earth wire, then neutral, as far as there are any.
 * @param armHeight metre above ground, less the sag to be counted; @param at metre across, of the pole's axis
 */
export function poleTopPlaces(name: PoleTopName, armHeight: number, at = 0): readonly LinePlace[] {
  const { phases, earthWire, neutral }: PoleTop = poleTops[name]
  const seats = [...phases, earthWire, neutral].filter((it) => it !== undefined)
  return seats.map(({ across, below }) => ({ x: at + across, y: armHeight - below }))
}

function seat(across: number, below: number): Seat {
  return { across, below }
}
