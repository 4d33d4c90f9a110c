/** Every type of gear, by id. A new item: its file, one line here, its view, its words. */
import { invariant } from '../units/invariant'
import type { GearType } from './gearType'
import { barrierSet } from './barrierSet'
import { binoculars } from './binoculars'
import { bondLead } from './bondLead'
import { boots } from './boots'
import { earthLead } from './earthLead'
import { earthRod } from './earthRod'
import { handline } from './handline'
import { harness } from './harness'
import { hvDetector } from './hvDetector'
import { hvProvingUnit } from './hvProvingUnit'
import { isolationEarth } from './isolationEarth'
import { lock } from './lock'
import { lvGloves } from './lvGloves'
import { lvGuard } from './lvGuard'
import { lvProvingUnit } from './lvProvingUnit'
import { lvTester } from './lvTester'
import { operatingStick } from './operatingStick'
import { operatorMat } from './operatorMat'
import { pinInsulator } from './pinInsulator'
import { poleCover } from './poleCover'
import { rescueKit } from './rescueKit'
import { rodDriver } from './rodDriver'
import { signSet } from './signSet'
import { stickBrush } from './stickBrush'
import { switchingGloves } from './switchingGloves'
import { tag } from './tag'
import { workGloves } from './workGloves'

const all: readonly GearType[] = [
  earthLead,
  bondLead,
  earthRod,
  rodDriver,
  operatingStick,
  stickBrush,
  hvDetector,
  hvProvingUnit,
  lvTester,
  lvProvingUnit,
  lvGloves,
  switchingGloves,
  workGloves,
  boots,
  poleCover,
  lvGuard,
  lock,
  tag,
  barrierSet,
  signSet,
  harness,
  handline,
  rescueKit,
  binoculars,
  operatorMat,
  pinInsulator,
  isolationEarth,
]

export const gearCatalogue: ReadonlyMap<string, GearType> = new Map(all.map((type) => [type.id, type]))

/** @throws InvariantError when the catalogue has no such type; files are checked when they are read. */
export function requireGearType(id: string): GearType {
  const type = gearCatalogue.get(id)
  invariant(type, 'a type of the gear catalogue', id)
  return type
}
