/**
 * What a livening is to the place, by its kind: whose source it needs, on which phases it comes, how it gets there and
 * what takes its cause away. One entry a kind; a kind without one does not compile. What it does to the circuit is the
 * register of hazard/circuit/livening.
 */
import { invariant } from '../units/invariant'
import type { Livening, LiveningKind, LiveningOf } from './livening'
import { backFedPhases, backFeedSigns, backFedVoltage, findBackFeedStop } from './backFeed'
import { isGuarded, leadsAtWire } from './leadsAtWire'
import { phasesOf } from './phasesOf'
import { isLockedBy, requireSwitch } from './questions'
import { findJumpersOut, jumpersBetween } from './jumpersOut'
import { phases, type Phase, type Scenario, type ScenarioSwitch, type ThingId } from './scenario'
import type { Evidence, Site } from './site'
import { isBucketUp } from './truckState'
import { hasOwnSupply, isLowVoltageFed, suppliedVoltage } from './supplied'

export type Sign = Pick<Evidence, 'of' | 'by' | 'says'>

export interface LiveningTraits<Kind extends LiveningKind> {
  /** Feeders that have to be in service for it to happen; none where it brings a source of its own. */
  feeders(scenario: Scenario, livening: LiveningOf<Kind>): readonly ThingId[]
  /** Phases of the section's conductors that it puts voltage on. */
  phases(scenario: Scenario, livening: LiveningOf<Kind>): readonly Phase[]
  /**
   * `switch`: by a blade, which the site's switches show. `crossing`: by a conductor that comes down at the crossing and
   * leaves its marks there. `elsewhere`: by anything that cannot be seen from the pole.
   */
  readonly by: 'switch' | 'crossing' | 'elsewhere'
  /** What everybody on site sees and hears of it; a flash and a crack when not said. */
  signs?(scenario: Scenario, livening: LiveningOf<Kind>): readonly Sign[]
  /** Volts to earth that it puts there, where no feeder is behind it. */
  voltage?(scenario: Scenario, livening: LiveningOf<Kind>): number
  /** Why it cannot happen any more, as a kebab fact; undefined while its cause stands. */
  removedBy(site: Site, livening: LiveningOf<Kind>): string | undefined
}

/** A feeder's phase on something beside the section: nothing of it is on the section's conductors. */
const besideTheSection = {
  feeders: (_: Scenario, it: { readonly feeder: ThingId }) => [it.feeder],
  phases: () => [],
  by: 'elsewhere',
  removedBy: (site: Site, it: { readonly feeder: ThingId }) => whenOut(site, it.feeder, 'feeder-taken-out'),
} as const

export const liveningTraits: { readonly [Kind in LiveningKind]: LiveningTraits<Kind> } = {
  clash: {
    feeders: (_, it) => [it.feeder],
    phases: (_, it) => [it.phase],
    by: 'crossing',
    removedBy: (site, it) => whenApart(site, it.feeder) ?? whenCutOff(site),
  },
  'clash-two': {
    feeders: (_, it) => [it.feeder],
    phases: (_, it) => it.phases,
    by: 'crossing',
    removedBy: (site, it) => whenApart(site, it.feeder) ?? whenCutOff(site),
  },
  'switch-closed': {
    feeders: (scenario, it) => [switchIn(scenario, it.switch).feeder],
    phases: () => phases,
    by: 'switch',
    removedBy: (site, it) => whenHeld(site, it.switch),
  },
  'fuse-carrier': {
    feeders: (scenario, it) => [switchIn(scenario, it.switch).feeder],
    phases: (_, it) => [it.phase],
    by: 'switch',
    removedBy: (site, it) => whenHeld(site, it.switch),
  },
  induction: {
    feeders: () => [],
    phases: () => phases,
    by: 'elsewhere',
    removedBy: (site, it) => {
      const feeder = site.scenario.parallels?.find(({ id }) => id === it.parallel)?.feeder
      return feeder === undefined ? undefined : whenOut(site, feeder, 'feeder-taken-out')
    },
  },
  'pick-up': {
    feeders: () => [],
    phases: () => phases,
    by: 'elsewhere',
    removedBy: () => undefined,
  },
  'neutral-raised': {
    feeders: (_, it) => [it.feeder],
    phases: () => [],
    by: 'elsewhere',
    removedBy: (site, it) => whenOut(site, it.feeder, 'feeder-taken-out'),
  },
  'coil-fed': {
    feeders: (scenario, it) => [switchIn(scenario, it.switch).feeder],
    phases: (_, it) => [it.phase],
    by: 'switch',
    removedBy: (site, it) => whenHeld(site, it.switch),
  },
  'back-feed': {
    feeders: () => [],
    phases: (scenario, it) => backFedPhases(scenario, it.source),
    by: 'elsewhere',
    voltage: (scenario, it) => backFedVoltage(scenario, it.source),
    signs: (scenario, it) => backFeedSigns(scenario, it.source),
    removedBy: (site, it) => findBackFeedStop(site, it.source),
  },
  'low-voltage-fed': {
    feeders: () => [],
    phases: () => [],
    by: 'elsewhere',
    signs: (scenario, it) => backFeedSigns(scenario, it.source).filter(({ of }) => of === it.source),
    removedBy: (site, it) => (isLockedBy(site, site.mains[it.source]?.lock) ? 'source-locked' : undefined),
  },
  'street-lamps-on': {
    feeders: () => [],
    phases: () => [],
    by: 'elsewhere',
    signs: (_, it) => [{ of: it.wire, by: 'look', says: 'livening.lamps' }],
    removedBy: (site, it) => {
      if (isLockedBy(site, site.mains[it.wire]?.lock)) return 'street-lamps-locked'
      if (hasOwnSupply(site, it.wire)) return undefined
      return isLowVoltageFed(site, (phase) => suppliedVoltage(site, phase) > 0) ? undefined : 'low-voltage-dead'
    },
  },
  'lead-on-low-voltage': {
    feeders: () => [],
    phases: () => [],
    by: 'elsewhere',
    signs: (_, it) => [{ of: it.wire, by: 'look', says: 'livening.spark' }],
    removedBy: (site, it) => {
      if (isGuarded(site, it.wire)) return 'wire-guarded'
      if (leadsAtWire(site, it.wire).length === 0) return 'no-lead-at-the-wires'
      return isLowVoltageFed(site, (phase) => suppliedVoltage(site, phase) > 0) ? undefined : 'low-voltage-dead'
    },
  },
  'blade-shut': {
    feeders: (scenario, it) => [switchIn(scenario, it.switch).feeder],
    phases: (_, it) => [it.phase],
    by: 'switch',
    removedBy: (site, it) => whenOut(site, switchIn(site.scenario, it.switch).feeder, 'feeder-taken-out'),
  },
  'remote-close': {
    feeders: (scenario, it) => [switchIn(scenario, it.switch).feeder],
    phases: (scenario) => phasesOf(scenario.conductors),
    by: 'switch',
    removedBy: (site, it) => {
      if (requireSwitch(site, it.switch).control === 'local') return 'switch-local'
      if (isOnlyByHand(site, it.switch)) return 'motor-supply-off'
      return whenOut(site, switchIn(site.scenario, it.switch).feeder, 'feeder-taken-out')
    },
  },
  'other-crew-closes': {
    feeders: (scenario, it) => [switchIn(scenario, it.switch).feeder],
    phases: (scenario) => phasesOf(scenario.conductors),
    by: 'switch',
    removedBy: (site, it) => {
      if (isLockedBy(site, requireSwitch(site, it.switch).lock)) return 'switch-locked'
      return whenOut(site, switchIn(site.scenario, it.switch).feeder, 'feeder-taken-out')
    },
  },
  'conductor-falls': {
    feeders: (_, it) => [it.feeder],
    phases: (scenario, it) => scenario.conductors.filter(({ id }) => id === it.onto).map(({ phase }) => phase),
    by: 'crossing',
    removedBy: (site, it) =>
      it.at === 'crossing'
        ? (whenApart(site, it.feeder) ?? whenCutOff(site))
        : whenOut(site, it.feeder, 'crossing-taken-out'),
  },
  'jumper-back': {
    feeders: (_, it) => [it.feeder],
    phases: (_, it) => [it.phase],
    by: 'elsewhere',
    removedBy: (site, it) => {
      if (it.at === undefined) return whenOut(site, it.feeder, 'feeder-taken-out')
      const out = findJumpersOut(site, it.at)
      if (out?.tails !== 'hanging') return out === undefined ? 'jumpers-on' : 'tails-tied-back'
      return whenApart(site, it.feeder)
    },
  },
  'conductor-down': besideTheSection,
  'neighbour-fault': besideTheSection,
  'boom-touches': {
    ...besideTheSection,
    removedBy: (site, it) => {
      const isStowed = site.scenario.truck?.boom !== undefined && !isBucketUp(site)
      return isStowed ? 'boom-stowed' : whenOut(site, it.feeder, 'feeder-taken-out')
    },
  },
  'handle-live': {
    feeders: (scenario, it) => [switchIn(scenario, it.switch).feeder],
    phases: () => [],
    by: 'elsewhere',
    removedBy: (site, it) => whenOut(site, switchIn(site.scenario, it.switch).feeder, 'feeder-taken-out'),
  },
  lightning: {
    feeders: () => [],
    phases: (scenario) => phasesOf(scenario.conductors),
    by: 'elsewhere',
    removedBy: () => undefined,
  },
  'stored-charge': {
    feeders: () => [],
    phases: (_, it) => it.phases,
    by: 'elsewhere',
    removedBy: () => undefined,
  },
}

/** The entry of a livening's own kind. */
export function traitsOf(livening: Livening): LiveningTraits<LiveningKind> {
  return liveningTraits[livening.kind] as LiveningTraits<LiveningKind>
}

/** Feeders that have to be in service for it to happen. */
export function feedersOf(scenario: Scenario, livening: Livening): readonly ThingId[] {
  return traitsOf(livening).feeders(scenario, livening)
}

/** Why it cannot happen any more, as a kebab fact; undefined while its cause stands. */
export function findRemovedCause(site: Site, livening: Livening): string | undefined {
  return traitsOf(livening).removedBy(site, livening)
}

function whenOut(site: Site, feeder: ThingId, fact: string): string | undefined {
  return site.feedersOut.includes(feeder) ? fact : undefined
}

/** The crossing circuit is out, or a guard keeps it apart. */
function whenApart(site: Site, feeder: ThingId): string | undefined {
  return site.guardedFrom?.includes(feeder) ? 'crossing-guarded' : whenOut(site, feeder, 'crossing-taken-out')
}

/** The piece of the section at the crossing hangs apart, and no tail can swing back onto the line. */
function whenCutOff(site: Site): string | undefined {
  const between = jumpersBetween(site, site.scenario.section.crossingAlong)
  return between.some((it) => it.tails === 'tied-back') ? 'jumpers-out' : undefined
}

/** Nobody closes it from afar: on local, without a drive, or with the drive's supply off. */
function isOnlyByHand(site: Site, at: ThingId): boolean {
  const { control, motorSupply } = requireSwitch(site, at)
  return control === 'local' || motorSupply === 'off' || !switchIn(site.scenario, at).remote
}

/** By hand or from afar it cannot be closed any more, or its feeder is out. */
function whenHeld(site: Site, at: ThingId): string | undefined {
  const { lock } = requireSwitch(site, at)
  const { feeder } = switchIn(site.scenario, at)
  return lock !== null && isOnlyByHand(site, at) ? 'switch-locked' : whenOut(site, feeder, 'feeder-taken-out')
}

function switchIn(scenario: Scenario, id: ThingId): ScenarioSwitch {
  const at = scenario.switches.find((it) => it.id === id)
  invariant(at, 'a switch of the section', id)
  return at
}
