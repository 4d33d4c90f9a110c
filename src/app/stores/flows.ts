/** Currents of an instant as drawings show them: which way each goes, and how dense its dashes are. Pure. */
import type { Instant } from '../../engine'

/** Dashes are densest from this current on, ampere, even when nothing in the picture carries more. */
const leastFull = 10

/** Below this share of the largest current nothing is drawn. */
export const leastShare = 0.002

/** Dashes of every current pass a point this often: at most 0.6 a second. */
export const dashesPerSecond = 0.5

/** One ampere and the largest current are decades apart: the density follows the logarithm over three decades, 0 to 1. */
export const dashDensity = (amperes: number, most: number): number =>
  Math.min(1, Math.max(0, 1 + Math.log10(Math.max(amperes, 1e-3) / most) / 3))

interface Phasor {
  readonly re: number
  readonly im: number
}

/** Phasors as signed sizes: positive in phase with the largest current into the ground. */
export function signOf({ electrodes }: Pick<Instant, 'electrodes'>): (current: Phasor) => number {
  const strongest = electrodes.reduce<Instant['electrodes'][number] | null>(
    (most, it) => (!most || it.size > most.size ? it : most),
    null,
  )
  if (!strongest) return size
  const { re, im } = strongest.current
  return (current) => Math.sign(current.re * re + current.im * im || 1) * size(current)
}

const size = ({ re, im }: Phasor): number => Math.sqrt(re * re + im * im)

export interface Currents {
  /** The largest, ampere. */
  readonly most: number
  /** Signed ampere of the first branch whose id begins like that; 0 when there is none. */
  readonly of: (beginning: string) => number
}

export function currentsOf(instant: Pick<Instant, 'electrodes' | 'branches'>): Currents {
  const signed = signOf(instant)
  const sized = instant.branches.map((it) => it.size)
  return {
    most: Math.max(leastFull, ...sized),
    of: (beginning) => {
      const branch = instant.branches.find(({ id }) => id.startsWith(beginning))
      return branch ? signed(branch.current) : 0
    },
  }
}
