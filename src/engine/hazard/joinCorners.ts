/** What one livening does to everybody over all corners: one verdict each. */
import type { Exposure } from './exposure'
import { verdictOf, type CornerRatio } from './limits'
import type { StateAnswer } from './stateAnswer'

export interface CornerAnswer {
  readonly corner: string
  /** The line itself; a person may still be left open. */
  readonly isSolved: boolean
  readonly exposures: readonly Exposure[]
}

/**
 * One entry per person and, for the public, per path. The path is that of the first corner in which anything reached
 * the person, the judged value of each corner is that person's. Who could not be solved in some corner, the line or the
 * person, is neither below nor above.
 *
 * @param open persons whose own answer is missing in some corner
 */
export function joinCorners(
  livening: string,
  solved: readonly CornerAnswer[],
  open: ReadonlySet<string>,
): StateAnswer['exposures'] {
  const isLineOpen = solved.some((it) => !it.isSolved)
  const firsts = new Map<string, Exposure>()
  for (const it of solved.flatMap(({ exposures }) => exposures)) {
    if (!firsts.has(nameOf(it))) firsts.set(nameOf(it), it)
  }
  return [...firsts].map(([name, exposure]) => {
    const corners = solved.map(({ corner, exposures }) => {
      return { corner, ratio: ratioOf(exposures.find((it) => nameOf(it) === name)) }
    })
    const verdict = verdictOf(corners.map((it) => it.ratio))
    const ratios = corners.flatMap(({ corner, ratio }) => [
      [corner, ratio.held] as const,
      ...(ratio.failed === null ? [] : [[`${corner} fails`, ratio.failed] as const]),
    ])
    return {
      person: exposure.person,
      path: exposure.path,
      verdict: isLineOpen || open.has(exposure.person) ? 'marginal' : verdict,
      livening,
      exposure,
      ratios: Object.fromEntries(ratios),
    }
  })
}

function nameOf({ person, path }: Exposure): string {
  return person === 'bystander' ? `${person} ${path}` : person
}

function ratioOf(exposure: Exposure | undefined): CornerRatio {
  if (exposure === undefined) return { held: 0, failed: null }
  const { ifItFails } = exposure
  return { held: exposure.judged / exposure.limit, failed: ifItFails ? ifItFails.judged / ifItFails.limit : null }
}
