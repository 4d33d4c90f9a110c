/** Whether a livening still has its cause in the site: credit for whoever removed it. */
import { requireSwitch } from './questions'
import type { Livening } from './scenario'
import type { Site } from './site'

/** Why it cannot happen any more, as a kebab fact; undefined while its cause stands. */
export function findRemovedCause(site: Site, livening: Livening): string | undefined {
  if (livening.kind !== 'switch-closed') {
    return site.feedersOut.includes(livening.feeder) ? 'crossing-taken-out' : undefined
  }
  const { lock, control } = requireSwitch(site, livening.switch)
  const device = site.scenario.switches.find((it) => it.id === livening.switch)
  const isHeld = lock !== null && (control === 'local' || !device?.remote)
  if (isHeld) return 'switch-locked'
  return device && site.feedersOut.includes(device.feeder) ? 'feeder-taken-out' : undefined
}
