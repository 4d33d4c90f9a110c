/** The register of mechanisms: one line each. A kind without one does not compile. */
import type { Element } from '../../../physics/network'
import type { Livening, LiveningKind } from '../../../site/livening'
import type { Scenario } from '../../../site/scenario'
import type { Fitted } from '../fitted'
import { backFeed } from './backFeed'
import { bladeShut } from './bladeShut'
import { boomTouches } from './boomTouches'
import { conductorDown } from './conductorDown'
import { conductorFalls } from './conductorFalls'
import { handleLive } from './handleLive'
import { jumperBack } from './jumperBack'
import { lightning } from './lightning'
import { neighbourFault } from './neighbourFault'
import { otherCrewCloses } from './otherCrewCloses'
import { remoteClose } from './remoteClose'
import { storedCharge } from './storedCharge'
import { clash } from './clash'
import { clashTwo } from './clashTwo'
import { coilFed } from './coilFed'
import { fuseCarrier } from './fuseCarrier'
import { induction } from './induction'
import { leadOnLowVoltage } from './leadOnLowVoltage'
import { lowVoltageFed } from './lowVoltageFed'
import type { Mechanism, OwnSource } from './mechanism'
import { neutralRaised } from './neutralRaised'
import { pickUp } from './pickUp'
import { streetLampsOn } from './streetLampsOn'
import { switchClosed } from './switchClosed'

export const mechanisms: { readonly [Kind in LiveningKind]: Mechanism<Kind> } = {
  clash,
  'clash-two': clashTwo,
  'switch-closed': switchClosed,
  'back-feed': backFeed,
  'low-voltage-fed': lowVoltageFed,
  'street-lamps-on': streetLampsOn,
  'lead-on-low-voltage': leadOnLowVoltage,
  'fuse-carrier': fuseCarrier,
  induction,
  'pick-up': pickUp,
  'neutral-raised': neutralRaised,
  'coil-fed': coilFed,
  'blade-shut': bladeShut,
  'boom-touches': boomTouches,
  'conductor-down': conductorDown,
  'conductor-falls': conductorFalls,
  'handle-live': handleLive,
  'jumper-back': jumperBack,
  lightning,
  'neighbour-fault': neighbourFault,
  'other-crew-closes': otherCrewCloses,
  'remote-close': remoteClose,
  'stored-charge': storedCharge,
}

function mechanismOf(livening: Livening): Mechanism<LiveningKind> {
  return mechanisms[livening.kind] as Mechanism<LiveningKind>
}

/** False where a livening is told in words, without a number. */
export function isComputed(livening: Livening): boolean {
  return mechanismOf(livening).isComputed ?? true
}

export function liveningLinks(scenario: Scenario, livening: Livening, fitted: Fitted): readonly Element[] {
  return mechanismOf(livening).links(scenario, livening, fitted)
}

/** Undefined where the section's feeders alone are behind it. */
export function liveningSource(scenario: Scenario, livening: Livening | 'none'): OwnSource | undefined {
  return livening === 'none' ? undefined : mechanismOf(livening).ownSource?.(scenario, livening)
}

export function liveningChange(
  elements: readonly Element[],
  scenario: Scenario,
  livening: Livening,
): readonly Element[] {
  return mechanismOf(livening).change?.(elements, scenario, livening) ?? elements
}
