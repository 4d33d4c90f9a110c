/** The crew's picture of the site at an instant of a livening: what was livened is live, earthed wires stand where the site stands. */
import type { SiteView } from '../drawing/siteView'
import { viewOfSite } from '../drawing/viewOfSite'
import type { Shown } from './useShown'

/** Above this an earthed wire is drawn as standing at site potential, volts. */
const risenFrom = 50

export function liveView({ belief, instant }: Pick<Shown, 'belief' | 'instant'>): SiteView {
  const view = viewOfSite(belief)
  const voltsOf = (id: string): number =>
    instant.nodes.find((it) => it.node === `${id}@pole` || it.node === id)?.size ?? 0
  return {
    ...view,
    wires: view.wires.map((wire) => {
      const isClamped = belief.clamps.some((clamp) => clamp.on === wire.id)
      const isRisen = voltsOf(wire.id) > risenFrom
      return { ...wire, state: isRisen ? (isClamped ? 'site-potential' : 'live') : wire.state }
    }),
  }
}
