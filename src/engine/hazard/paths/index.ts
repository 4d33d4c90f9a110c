/** The register of exposure paths. The first that joins two contacts names their path. */
import { invariant } from '../../units/invariant'
import type { Touch } from '../bodies/touch'
import { acrossGap } from './acrossGap'
import { arcFlash } from './arcFlash'
import { bucket } from './bucket'
import { fence } from './fence'
import { handline } from './handline'
import { legLeg } from './legLeg'
import { livestockPace } from './livestockPace'
import { phaseNeutral } from './phaseNeutral'
import { rescuer } from './rescuer'
import { vehicle } from './vehicle'
import { bystanderPace } from './bystanderPace'
import { bystanderTouch } from './bystanderTouch'
import type { ExposurePath } from './exposurePath'
import { handFeet } from './handFeet'
import { handHand } from './handHand'
import { handLead } from './handLead'
import { handle } from './handle'
import { handMetalwork } from './handMetalwork'
import { handPole } from './handPole'
import { handThigh } from './handThigh'
import { lowVoltage } from './lowVoltage'
import { pace } from './pace'
import { stick } from './stick'
import { thighFeet } from './thighFeet'

export const exposurePaths: readonly ExposurePath[] = [
  rescuer,
  lowVoltage,
  stick,
  handle,
  bucket,
  handline,
  vehicle,
  fence,
  acrossGap,
  phaseNeutral,
  legLeg,
  handMetalwork,
  handHand,
  handThigh,
  handFeet,
  handPole,
  handLead,
  pace,
  bystanderPace,
  bystanderTouch,
  livestockPace,
  arcFlash,
  thighFeet,
]

export function pathBetween(a: Touch, b: Touch): ExposurePath {
  const path = exposurePaths.find((it) => it.joins(a, b))
  invariant(path, 'a path between any two contacts', a.limb, b.limb)
  return path
}
