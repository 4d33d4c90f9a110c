/** Every qualification model, one line each. */
import type { Model } from '../model'
import { bodyImpedanceModel } from './bodyImpedance'
import { conductorModel } from './conductor'
import { electrodeSystemModel } from './electrodeSystem'
import { fuseModel } from './fuse'
import { insulationModel } from './insulation'
import { leadHeatingModel } from './leadHeating'
import { leadShotsModel } from './leadShots'
import { lineConstantsModel } from './lineConstants'
import { lineCouplingModel } from './lineCoupling'
import { networkModel } from './network'
import { protectionModel } from './protection'
import { relayTravelModel } from './relayTravel'
import { shockZoneModel } from './shockZone'
import { tolerableModel } from './tolerable'

export const models: readonly Model[] = [
  bodyImpedanceModel,
  conductorModel,
  electrodeSystemModel,
  fuseModel,
  insulationModel,
  leadHeatingModel,
  leadShotsModel,
  lineConstantsModel,
  lineCouplingModel,
  networkModel,
  protectionModel,
  relayTravelModel,
  shockZoneModel,
  tolerableModel,
]
