/** Every qualification model, one line each. */
import type { Model } from '../model'
import { bodyImpedanceModel } from './bodyImpedance'
import { electrodeSystemModel } from './electrodeSystem'
import { insulationModel } from './insulation'
import { leadHeatingModel } from './leadHeating'
import { lineConstantsModel } from './lineConstants'
import { networkModel } from './network'
import { protectionModel } from './protection'
import { shockZoneModel } from './shockZone'
import { tolerableModel } from './tolerable'

export const models: readonly Model[] = [
  bodyImpedanceModel,
  electrodeSystemModel,
  insulationModel,
  leadHeatingModel,
  lineConstantsModel,
  networkModel,
  protectionModel,
  shockZoneModel,
  tolerableModel,
]
