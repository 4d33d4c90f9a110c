/**
 * Poles of the section, away from the worked one, whose jumpers another crew can take out when the control room is asked.
 * What lies beyond them is then a section of its own: nothing comes from there any more, and no earth there protects here.
 * Tails that nobody tied back hang beside the line and can swing onto it again.
 */
import type { ThingId } from './ids'
import type { Site } from './site'

export interface SectionJumpers {
  readonly id: ThingId
  /** Of the pole that they are on. */
  readonly number: string
  /** Metres along the section from the worked pole; positive towards the crossing. */
  readonly along: number
}

export interface JumpersOut {
  readonly at: ThingId
  readonly tails: 'tied-back' | 'hanging'
}

export function findJumpersOut(site: Pick<Site, 'jumpersOut'>, at: ThingId): JumpersOut | undefined {
  return site.jumpersOut?.find((it) => it.at === at)
}

/** Jumpers that are out between the worked pole and that place of the section. */
export function jumpersBetween(site: Site, along: number): readonly JumpersOut[] {
  const { sectionJumpers = [] } = site.scenario
  return (site.jumpersOut ?? []).filter((out) => {
    const at = sectionJumpers.find((it) => it.id === out.at)?.along ?? 0
    return at * along > 0 && Math.abs(at) < Math.abs(along)
  })
}

export function isApart(site: Site, along: number): boolean {
  return jumpersBetween(site, along).length > 0
}
