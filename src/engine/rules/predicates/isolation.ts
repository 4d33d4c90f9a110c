/** Questions about sources: switches, locks, paper with the control room. */
import { phases } from '../../site/scenario'
import type { SitePredicate } from '../language/predicate'

const isolated: SitePredicate = {
  id: 'isolated',
  says: 'every blade of every switch that bounds the section really stands open',
  about: 'site',
  takes: {},
  fails({ site }) {
    for (const [id, state] of Object.entries(site.switches)) {
      const phase = phases.find((each) => state.blades[each] === 'closed')
      if (phase !== undefined) return { why: 'blade-closed', switch: id, blade: `${id}/${phase}` }
    }
    return undefined
  },
}

const lockedAndTagged: SitePredicate = {
  id: 'locked-and-tagged',
  says: 'every switch that bounds the section carries a lock and a tag',
  about: 'site',
  takes: {},
  fails({ site }) {
    for (const [id, state] of Object.entries(site.switches)) {
      if (state.lock === null) return { why: 'no-lock', switch: id }
      if (state.tag === null) return { why: 'no-tag', switch: id }
    }
    return undefined
  },
}

const inLocal: SitePredicate = {
  id: 'in-local',
  says: 'no switch of the section can be worked from afar',
  about: 'site',
  takes: {},
  fails({ site }) {
    const remote = Object.entries(site.switches).find(([, state]) => state.control === 'remote')
    return remote === undefined ? undefined : { why: 'remote', switch: remote[0] }
  },
}

const isolationEarthed: SitePredicate = {
  id: 'isolation-earthed',
  says: 'every switch that bounds the section is earthed at its isolation point',
  about: 'site',
  takes: {},
  fails({ site }) {
    const bare = Object.entries(site.switches).find(([, state]) => state.earth === null)
    return bare === undefined ? undefined : { why: 'no-isolation-earth', switch: bare[0] }
  },
}

const recloseBlocked: SitePredicate = {
  id: 'reclose-blocked',
  says: 'the reclose of every feeder that feeds or crosses the section is off',
  about: 'site',
  takes: {},
  fails({ site }) {
    const { feeders } = site.scenario
    const left = feeders.find(
      (feeder) => feeder.recloseDeadTimes.length > 0 && site.paper.recloseBlocked[feeder.id] !== true,
    )
    return left === undefined ? undefined : { why: 'reclose-on', feeder: left.id }
  },
}

const handlesAsFound: SitePredicate = {
  id: 'handles-as-found',
  says: 'every handle stands as it did when the job began',
  about: 'site',
  takes: {},
  fails({ site }) {
    const turned = site.scenario.switches.find(
      ({ id, closed }) => site.switches[id]?.handle !== (closed ? 'closed' : 'open'),
    )
    return turned === undefined ? undefined : { why: 'not-as-found', switch: turned.id }
  },
}

const controlAsFound: SitePredicate = {
  id: 'control-as-found',
  says: 'every switch that can be worked from afar can be again',
  about: 'site',
  takes: {},
  fails({ site }) {
    const left = site.scenario.switches.find(({ id, remote }) => remote && site.switches[id]?.control === 'local')
    return left === undefined ? undefined : { why: 'left-local', switch: left.id }
  },
}

const permit = (id: string, state: string, says: string): SitePredicate => ({
  id,
  says,
  about: 'site',
  takes: {},
  fails: ({ site }) => (site.paper.permit === state ? undefined : { why: `permit-${site.paper.permit}` }),
})

const paperIs = (
  id: string,
  key: 'safeToWork' | 'earthsReported' | 'workDone' | 'stopped' | 'closed',
  says: string,
): SitePredicate => ({
  id,
  says,
  about: 'site',
  takes: {},
  fails: ({ site }) => (site.paper[key] ? undefined : { why: `not-${id}` }),
})

const permitAfterEarths: SitePredicate = {
  id: 'permit-waits-for-earths',
  says: 'this pack wants earths at the isolation points before the permit',
  about: 'site',
  takes: {},
  fails: ({ view }) =>
    view.pack.permitAfter === 'earthsAtIsolationPoints' ? undefined : { why: 'permit-after-isolation' },
}

const permitWider: SitePredicate = {
  id: 'permit-wider',
  says: 'the control room has widened the permit to the next pole',
  about: 'site',
  takes: {},
  fails: ({ site }) => (site.marks['permit-wider'] === undefined ? { why: 'permit-not-wider' } : undefined),
}

const nextPoleAssessed: SitePredicate = {
  id: 'next-pole-assessed',
  says: 'the next pole has been looked over',
  about: 'site',
  takes: {},
  fails: ({ site }) => (site.marks['next-pole-assessed'] === undefined ? { why: 'not-assessed' } : undefined),
}

const stepInHand: SitePredicate = {
  id: 'step-in-hand',
  says: 'the step in hand is for the switch of the act and for the way in which the act worked it',
  about: 'act',
  takes: {},
  fails({ site, entry }) {
    const { step } = site.paper
    if (entry === undefined || step === null || step.switch !== entry.order.on) return { why: 'no-step' }
    return step.to === entry.after.switches[step.switch]?.handle ? undefined : { why: 'other-step', stepTo: step.to }
  },
}

export const isolationPredicates = [
  stepInHand,
  isolated,
  lockedAndTagged,
  inLocal,
  isolationEarthed,
  recloseBlocked,
  handlesAsFound,
  controlAsFound,
  permit('permit-held', 'held', 'the permit is held'),
  permit('permit-returned', 'returned', 'the permit has been returned'),
  paperIs('declared-safe', 'safeToWork', 'declared safe to work'),
  paperIs('earths-reported', 'earthsReported', 'the earths have been reported'),
  paperIs('work-complete', 'workDone', 'the work was confirmed complete'),
  paperIs('job-stopped', 'stopped', 'the job was stopped'),
  paperIs('job-closed', 'closed', 'the job has been closed'),
  permitAfterEarths,
  permitWider,
  nextPoleAssessed,
]
