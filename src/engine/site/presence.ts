/** Who is on the job now and who is in charge of it. Somebody of the next shift arrives late. */
import type { PersonId } from './scenario'
import type { Site } from './site'

/** Not here before the second at which the scenario has them arrive: nobody can order them, nothing reaches them. */
export function isHere({ scenario, time }: Pick<Site, 'scenario' | 'time'>, who: PersonId): boolean {
  const member = scenario.crew.find((it) => it.id === who)
  return member?.arrivesAt === undefined || time >= member.arrivesAt
}

/** Whoever it was handed to; before that the one who has been here from the start. */
export function findInCharge({ scenario, paper }: Pick<Site, 'scenario' | 'paper'>): PersonId | undefined {
  const able = scenario.crew.filter((it) => it.role === 'person-in-charge')
  return paper.inCharge ?? (able.find((it) => it.arrivesAt === undefined) ?? able[0])?.id
}

/** Struck by what came alive, so that they do nothing more. */
export function isHurt({ hurt }: Pick<Site, 'hurt'>, who: PersonId): boolean {
  return hurt?.includes(who) ?? false
}
