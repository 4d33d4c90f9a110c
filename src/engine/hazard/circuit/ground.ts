/** The soil of a site, solved: what is in it, and what each part of that does to the others. */
import type { Electrode, ElectrodeSystem, GroundPoint } from '../../physics/soil'

export interface SiteElectrode {
  readonly node: string
  /** Its middle. */
  readonly at: GroundPoint
  /** Metres, of one shape by itself; 0 where several are joined: ask `distanceToElectrode(shape, …)`. */
  readonly radius: number
  readonly shape: Electrode
  /** Top at the surface: can be stood on. */
  readonly isAtSurface: boolean
  /** Belongs to the place of work: the public can come near it. */
  readonly isOnSite: boolean
}

export interface Ground {
  readonly system: ElectrodeSystem
  /** In the order of the system's currents. */
  readonly electrodes: readonly SiteElectrode[]
  readonly resistance: readonly (readonly number[])[]
}
