/** The register of exposure paths. The first that joins two contacts names their path. */
import { invariant } from '../../units/invariant'
import type { Touch } from '../bodies/touch'
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
  lowVoltage,
  stick,
  handle,
  handMetalwork,
  handHand,
  handThigh,
  handFeet,
  handPole,
  handLead,
  pace,
  bystanderPace,
  bystanderTouch,
  thighFeet,
]

export function pathBetween(a: Touch, b: Touch): ExposurePath {
  const path = exposurePaths.find((it) => it.joins(a, b))
  invariant(path, 'a path between any two contacts', a.limb, b.limb)
  return path
}
