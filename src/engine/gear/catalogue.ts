/** Every type of gear, by id. A new item: its file, one line here, its view, its words. */
import { invariant } from '../units/invariant'
import type { GearType } from './gearType'
import { barrierSet } from './barrierSet'
import { binoculars } from './binoculars'
import { blanket } from './blanket'
import { bondLead } from './bondLead'
import { boots } from './boots'
import { bucketBoom } from './bucketBoom'
import { bypassLead } from './bypassLead'
import { carrierBag } from './carrierBag'
import { climbingIrons } from './climbingIrons'
import { coneSet } from './coneSet'
import { cabinetKey } from './cabinetKey'
import { earthLead } from './earthLead'
import { earthRod } from './earthRod'
import { earthSet } from './earthSet'
import { earthTester } from './earthTester'
import { firstAidKit } from './firstAidKit'
import { handline } from './handline'
import { harness } from './harness'
import { hvDetector } from './hvDetector'
import { hvProvingUnit } from './hvProvingUnit'
import { insulatingPlatform } from './insulatingPlatform'
import { isolationEarth } from './isolationEarth'
import { jobPapers } from './jobPapers'
import { lamp } from './lamp'
import { leatherProtectors } from './leatherProtectors'
import { lock } from './lock'
import { lvBondSet } from './lvBondSet'
import { lvGloves } from './lvGloves'
import { lvGuard } from './lvGuard'
import { lvProvingUnit } from './lvProvingUnit'
import { lvTester } from './lvTester'
import { operatingStick } from './operatingStick'
import { operatorMat } from './operatorMat'
import { overshoes } from './overshoes'
import { pinInsulator } from './pinInsulator'
import { poleCover } from './poleCover'
import { radio } from './radio'
import { rescueKit } from './rescueKit'
import { rodDriver } from './rodDriver'
import { signSet } from './signSet'
import { sleeves } from './sleeves'
import { springLead } from './springLead'
import { stickBrush } from './stickBrush'
import { switchingGloves } from './switchingGloves'
import { tag } from './tag'
import { toolBag } from './toolBag'
import { truckBondLead } from './truckBondLead'
import { wireBrush } from './wireBrush'
import { workGloves } from './workGloves'

const all: readonly GearType[] = [
  earthLead,
  bondLead,
  bypassLead,
  truckBondLead,
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
  cabinetKey,
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
  earthSet,
  springLead,
  lvBondSet,
  carrierBag,
  earthTester,
  climbingIrons,
  lamp,
  wireBrush,
  toolBag,
  radio,
  firstAidKit,
  jobPapers,
  coneSet,
  bucketBoom,
  leatherProtectors,
  sleeves,
  overshoes,
  blanket,
  insulatingPlatform,
]

export const gearCatalogue: ReadonlyMap<string, GearType> = new Map(all.map((type) => [type.id, type]))

/** @throws InvariantError when the catalogue has no such type; files are checked when they are read. */
export function requireGearType(id: string): GearType {
  const type = gearCatalogue.get(id)
  invariant(type, 'a type of the gear catalogue', id)
  return type
}
