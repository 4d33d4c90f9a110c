/** Every qualification model, one line each. */
import type { Model } from '../model'
import { bodyImpedanceModel } from './bodyImpedance'
import { clampModel } from './clamp'
import { conditioningModel } from './conditioning'
import { conductorModel } from './conductor'
import { electrodeSystemModel } from './electrodeSystem'
import { fibrillationModel } from './fibrillation'
import { fuseModel } from './fuse'
import { insulationModel } from './insulation'
import { layerModel } from './layer'
import { leadHeatingModel } from './leadHeating'
import { leadShotsModel } from './leadShots'
import { lineConstantsModel } from './lineConstants'
import { lineCouplingModel } from './lineCoupling'
import { networkModel } from './network'
import { protectionModel } from './protection'
import { refinementModel } from './refinement'
import { relayTravelModel } from './relayTravel'
import { shockZoneModel } from './shockZone'
import { tolerableModel } from './tolerable'
import { wholeSiteModel } from './wholeSite'

export const models: readonly Model[] = [
  bodyImpedanceModel,
  clampModel,
  conditioningModel,
  conductorModel,
  electrodeSystemModel,
  fibrillationModel,
  fuseModel,
  insulationModel,
  layerModel,
  leadHeatingModel,
  leadShotsModel,
  lineConstantsModel,
  lineCouplingModel,
  networkModel,
  protectionModel,
  refinementModel,
  relayTravelModel,
  shockZoneModel,
  tolerableModel,
  wholeSiteModel,
]
