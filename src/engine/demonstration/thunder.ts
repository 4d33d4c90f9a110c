/** What the crew knows of the sky. */
import type { Belief } from '../site/belief'

/** As it was last heard or read. */
export function isThundering(belief: Belief): boolean {
  const last = belief.evidence.findLast((it) => it.says === 'weather.thunder-heard' || it.says === 'weather.read')
  return last?.says === 'weather.thunder-heard' || last?.values['thunder'] === 'thunder'
}
