/** Wires that live by a transformer of the section are bonded to each other once they were tested, and the bonds taken off last. */
import type { ThingId } from '../site/scenario'
import { isUp, item, kit, lookAgain } from './ask'
import { seatTurns } from './ground'
import type { Job } from './job'
import { lowVoltageOf } from './things'

/** Wires that come alive by nobody but a transformer of the section and what is behind it, and a set to bond them with. */
export function hasLvBonds({ scenario: { lv, items } }: Job): boolean {
  return lv.fedBy !== undefined && items.some((it) => it.type === 'lv-bond-set')
}

/** Neutral first, then each wire; after every one was tested. */
export function bondLowVoltage(job: Job): void {
  if (!hasLvBonds(job)) return
  const set = kit(job, 'lv-bonds')
  const bare = bondOrder(job).filter((on) => !job.belief().clamps.some((it) => it.on === on && it.lead === set))
  if (bare.length > 0) lookAgain(job, set)
  for (const on of bare) job.order(job.crew.pw, 'bond-lv', { on, with: set, values: { turns: seatTurns } })
}

export function unbondLowVoltage(job: Job): void {
  const bonds = job.kit.get('lv-bonds')
  if (bonds === undefined) return
  for (const on of [...bondOrder(job)].reverse()) {
    if (job.belief().clamps.some((it) => it.on === on && it.lead === bonds))
      job.order(job.crew.pw, 'unbond-lv', { on, with: bonds })
  }
}

const bondOrder = (job: Job): readonly ThingId[] => {
  const isNeutral = (id: ThingId): boolean => job.scenario.lv.wires.some((it) => it.id === id && it.phase === 'N')
  return [...lowVoltageOf(job)].sort((a, b) => Number(isNeutral(b)) - Number(isNeutral(a)))
}

/** Not yet up there and not yet on a wire. */
export const areBondsBelow = (job: Job): boolean =>
  hasLvBonds(job) && !isUp(job, kit(job, 'lv-bonds')) && item(job, kit(job, 'lv-bonds')).where.kind !== 'fitted'
