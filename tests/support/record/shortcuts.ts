/** Ways round what the trade asks, and what a careful crew does more than the usual: pieces that a recorded run can have. */
import type { Conduct, Intent } from '../../../src/engine'
import { walkTo } from '../../../src/engine/demonstration/ask'
import { instead, isWith, leavingOut, once, together, type Job } from './deviations'

/** Something is done before the first act that is meant, then the act itself. */
export const before = (act: string, first: (job: Job) => void): Conduct =>
  instead(
    once((intent) => intent.do === act),
    (intent, job) => {
      first(job)
      return [intent]
    },
  )

/** Clamped and unclamped with the hand, where the stick belongs: up to the line for it, and back. */
export const byHand = (on: string): Conduct =>
  instead(
    (intent) => intent.on === on && ['clamp', 'unclamp'].includes(intent.do),
    (intent) => [
      { who: intent.who, do: 'climb', values: { to: 'above-lv' } },
      { ...intent, do: `${intent.do}-by-hand` },
      { who: intent.who, do: 'climb', values: { to: 'below-lv' } },
    ],
  )

/** From the bucket: the clamp that is meant for a conductor goes on the neutral, and off it, with bare hands. */
export const neutralByHand = (conductor: string, neutral: string): Conduct => {
  let isOff = false
  const byHandThere = (intent: Intent, job: Job): readonly Intent[] => {
    const { at, height } = job.belief().truckState!.bucket!
    const moved = (y: number): Intent => {
      return { who: intent.who, do: 'move-bucket', on: 'bucket', values: { at: { x: at.x, y }, height } }
    }
    const gloves = (act: string): Intent => ({ who: intent.who, do: act, on: job.kit.get('rubber-gloves')! })
    const clamped: Intent = { ...intent, do: `${intent.do}-by-hand`, on: neutral }
    return [moved(-0.3), gloves('take-off'), clamped, gloves('wear'), moved(at.y)]
  }
  return {
    deviate: (intent, job) => {
      if (intent.do === 'tug' && intent.on === conductor) return []
      if (intent.do === 'clamp' && intent.on === conductor) return byHandThere(intent, job)
      if (intent.do !== 'unclamp' || isOff) return undefined
      isOff = true
      return [...byHandThere(intent, job), intent]
    },
  }
}

/** One value of an act is not what it should be. */
export const saying = (act: string, change: Readonly<Record<string, string | number>>): Conduct =>
  instead(
    (intent) => intent.do === act,
    (intent) => [{ ...intent, values: { ...intent.values, ...change } }],
  )

/** The handle is worked with bare hands, from the ground: no rubber, no mat. */
export const bareHandle = (): Conduct =>
  leavingOut(
    (intent, job) =>
      ['step-on-mat', 'step-off-mat'].includes(intent.do) ||
      (['take', 'wear', 'take-off', 'put-down'].includes(intent.do) &&
        (isWith(job, intent, 'switching-gloves') || isWith(job, intent, 'operator-mat'))),
  )

/** The lead from the truck to the earth at the pole stays on its reel. */
export const truckUnbonded = (): Conduct => leavingOut((intent) => ['bond-truck', 'unbond-truck'].includes(intent.do))

/**
 * A break after the barrier is up and before anything is earthed: everybody goes, everybody comes back.
 * @param spare the barrier that is set where the first is gone; undefined: nobody looks
 */
export const breakTaken = (spare?: string): Conduct =>
  before('clamp-earth-end', (job) => {
    const { pic, gw } = job.crew
    job.wait()
    job.order(pic, 'stop-job')
    for (const who of job.everybody) job.order(who, 'leave-site')
    job.wait()
    for (const { id } of job.scenario.crew) job.order(id, 'come-back')
    job.wait()
    if (spare !== undefined) setAgain(job, spare)
    job.order(pic, 'start-again')
    walkTo(job, gw, job.layout.rod)
  })

function setAgain(job: Job, barrier: string): void {
  const { pic, gw } = job.crew
  job.order(pic, 'look-over-again')
  job.order(gw, 'book-out', { on: barrier })
  job.order(gw, 'look', { on: barrier })
  job.order(gw, 'judge', { on: barrier, values: { verdict: 'pass' } })
  job.order(gw, 'set-barrier', { with: barrier, values: { outline: job.layout.outline } })
  job.wait()
}

/** The jumper of the conductor is undone with both hands and closed again, with nothing across the gap. */
export const jumperByHand = (on: string): Conduct =>
  before('untie', (job) => {
    job.order(job.crew.pw, 'open-jumper', { on, values: { how: 'by-hand' } })
    job.order(job.crew.pw, 'close-jumper', { on, values: { how: 'by-hand' } })
  })

/** The same with the stick, and a by-pass lead across the gap for as long as it is open. */
export const jumperBridged = (on: string, lead: string): Conduct =>
  before('untie', (job) => {
    const { gw, pw } = job.crew
    job.order(gw, 'book-out', { on: lead })
    job.wait()
    for (const act of ['read-label', 'look', 'test-item']) job.order(gw, act, { on: lead })
    job.order(gw, 'judge', { on: lead, values: { verdict: 'pass' } })
    walkTo(job, gw, job.layout.ropeStand)
    job.order(gw, 'tie-on', { on: lead })
    job.wait()
    job.order(pw, 'haul', { on: lead })
    job.order(pw, 'bridge-gap', { with: lead, on, values: { turns: 6 } })
    for (const act of ['open-jumper', 'close-jumper']) job.order(pw, act, { on, values: { how: 'with-stick' } })
    job.order(pw, 'unbridge-gap', { with: lead, on })
    job.order(pw, 'lower', { on: lead })
    job.wait()
    walkTo(job, gw, job.layout.lookout)
    job.wait()
  })

/** The control room sends people who put a guard under the circuit that crosses. */
export const crossingGuarded = (feeder: string): Conduct =>
  before('take-permit', (job) => job.order(job.crew.pic, 'ask-crossing-guard', { on: feeder }))

/** The jumpers towards the crossing are taken out and tied back before the permit. */
export const jumpersOut = (at: string): Conduct =>
  before('take-permit', (job) =>
    job.order(job.crew.pic, 'ask-jumpers-out', { on: at, values: { message: 'jumpers-out-tied-back' } }),
  )

/** The ground worker goes to the pole in the street shoes while it is worked on, and leans a hand on it. */
export const leaningOnPole = (): Conduct =>
  together(
    leavingOut(
      (intent, job) =>
        intent.who === job.crew.gw && ['wear', 'take-off'].includes(intent.do) && isWith(job, intent, 'boots'),
    ),
    before('untie', (job) => {
      const { gw } = job.crew
      job.order(gw, 'walk', { on: 'pole-foot' })
      job.order(gw, 'inspect-pole', { on: 'pole' })
      job.order(gw, 'walk', { on: 'clear' })
    }),
  )

/** One thing more goes up by the rope while the pole's metal is bonded to the line. */
export const sentUpLate = (item: string): Conduct =>
  before('untie', (job) => {
    const { gw, pw } = job.crew
    job.order(gw, 'book-out', { on: item })
    walkTo(job, gw, job.layout.ropeStand)
    job.order(gw, 'tie-on', { on: item })
    job.wait()
    job.order(pw, 'haul', { on: item })
    job.order(pw, 'lower', { on: item })
    job.wait()
    walkTo(job, gw, job.layout.lookout)
  })

/** Somebody is hurt: the ground worker climbs to them at once, with no source proved off; nobody does anything else. */
export const rescueTooSoon = (kit: string, aid: string): Conduct => {
  let isOver = false
  return {
    deviate: (_intent, job) => {
      const whom = job.belief().persons.find((it) => it.isHurt)?.id
      if (whom === undefined) return undefined
      if (isOver) return []
      isOver = true
      const { gw: who } = job.crew
      return [
        { who, do: 'walk', on: 'pole-foot' },
        { who, do: 'climb', values: { to: 'below-lv' } },
        { who, do: 'climb', values: { to: 'above-lv' } },
        { who, do: 'bring-down', with: kit, values: { whom } },
        { who, do: 'climb', values: { to: 'foot' } },
        { who, do: 'book-out', on: aid },
        { who, do: 'first-aid', with: aid, values: { whom } },
      ]
    },
  }
}
