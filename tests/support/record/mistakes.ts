/** What crews really do wrong, each as a piece that a recorded run can have. */
import type { Conduct } from '../../../src/engine'
import { outlineAround } from '../../../src/engine/demonstration/layout'
import { instead, isLastTug, isStandingBack, isWith, leavingOut, once, together } from './deviations'

const besideLead = { x: 1.5, y: -1 }

/** The lead goes on the conductors before its earth end is on the rod. */
export function conductorEndFirst(): Conduct {
  const isEarthEnd = (act: string): boolean => act === 'clamp-earth-end' || act === 'lay-lead'
  return together(
    leavingOut((intent) => isEarthEnd(intent.do)),
    instead(once(isLastTug), (intent, job) => {
      const { gw } = job.crew
      const [lead, rod] = [job.kit.get('lead')!, job.kit.get('rod')!]
      return [
        intent,
        { who: gw, do: 'walk', values: { to: job.layout.rod } },
        { who: gw, do: 'clamp-earth-end', with: lead, on: `rod/${rod}`, values: { turns: 6 } },
        { who: gw, do: 'lay-lead', with: lead, values: { route: 'clear-of-lv' } },
        { who: gw, do: 'walk', values: { to: job.layout.lookout } },
      ]
    }),
  )
}

/** The ground worker holds the lead while the pole worker clamps. */
export function handOnLead(): Conduct {
  return together(
    instead(once(isStandingBack), (intent) => [{ ...intent, values: { to: besideLead } }]),
    instead(
      once((intent) => intent.do === 'clamp'),
      (intent, job) => [{ who: job.crew.gw, do: 'hold-lead', with: job.kit.get('lead')! }, intent],
    ),
    instead(once(isLastTug), (intent, job) => [
      intent,
      { who: job.crew.gw, do: 'walk', values: { to: job.layout.lookout } },
    ]),
  )
}

/** The same hand on the same lead, and off again before anything is clamped. */
export function handOffLead(): Conduct {
  return instead(once(isStandingBack), (intent, job) => [
    { ...intent, values: { to: besideLead } },
    { who: job.crew.gw, do: 'hold-lead', with: job.kit.get('lead')! },
    intent,
  ])
}

export const leadLeftAloft = (): Conduct =>
  leavingOut((intent, job) => intent.do === 'lower' && isWith(job, intent, 'earth-lead'))

/** @param metres from everything in the ground */
export const smallBarrier = (metres: number): Conduct =>
  instead(
    (intent) => intent.do === 'set-barrier',
    (intent, job) => [{ ...intent, values: { outline: outlineAround(job.layout.electrodes, metres) } }],
  )

/** Nobody cleans the conductors where the clamps go on. */
export const unbrushed = (): Conduct => leavingOut((intent) => intent.do === 'brush')

/** The detector is proved before and not after. */
export function secondProofLeftOut(): Conduct {
  return leavingOut((intent, job) => intent.do === 'prove' && isWith(job, intent, 'hv-detector') && hasTested(job))
}

const hasTested = (job: Parameters<NonNullable<Conduct['deviate']>>[1]): boolean =>
  job.belief().conductors.some(({ lastTest }) => lastTest !== null)

/** One conductor is neither tested nor earthed: the one that is farthest on the list. */
export function oneConductorLeft(conductor: string): Conduct {
  return leavingOut(
    (intent) => intent.on === conductor && ['test', 'brush', 'say-dead', 'clamp', 'tug', 'unclamp'].includes(intent.do),
  )
}

/** The pole's metalwork is not tied to the line. */
export const unbonded = (): Conduct =>
  leavingOut(
    (intent, job) =>
      isWith(job, intent, 'bond-lead') &&
      !['book-out', 'look', 'read-label', 'judge', 'test-item', 'book-in'].includes(intent.do),
  )

/** Nobody tugs at a clamp. */
export const untugged = (): Conduct => leavingOut((intent) => intent.do === 'tug')

/** Nobody asks what could liven the line, and from where. */
export const questionNotAsked = (): Conduct => leavingOut((intent) => intent.do === 'answer-livening')

/** Reclosing stays as it is on every feeder. */
export const recloseLeftOn = (): Conduct => leavingOut((intent) => intent.do === 'ask-reclose-block')

/** No barrier at all. */
export const noBarrier = (): Conduct => leavingOut((intent) => ['set-barrier', 'take-in-barrier'].includes(intent.do))

/** Another item is taken to the work than the one that was looked at and passed. @param need its name in the kit */
export function exchanging(need: string, item: string): Conduct {
  let passed: string | undefined
  let isOut = false
  return {
    deviate: (intent, job) => {
      passed ??= job.kit.get(need)
      const change = (id: string | undefined): string | undefined => (id === passed ? item : id)
      if (passed === undefined || intent.do === 'book-in' || ![intent.with, intent.on].includes(passed))
        return undefined
      const [tool, on] = [change(intent.with), change(intent.on)]
      const first = isOut ? [] : [{ who: job.crew.gw, do: 'book-out', on: item }]
      isOut = true
      return [...first, { ...intent, ...(tool !== undefined && { with: tool }), ...(on !== undefined && { on }) }]
    },
  }
}
