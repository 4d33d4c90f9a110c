// Questions about jumpers that were taken out at other poles of the section.

import type { ThingId } from './ids'
import type { JumpersOut } from './sectionJumpers'
import type { Site } from './site'

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
