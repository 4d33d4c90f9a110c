/**
 * How thick the leads have to be here: what the pack asks at least, and what the worst fault of the sheet asks until its
 * protection has cleared it, in sections that are made (IEC 60228). All shots count where the control room does not take
 * the reclose off.
 */
import { askedArea, type LeadUse } from '../site/faultDuty'
import type { Job } from './job'

/** mm² of copper. */
const sections = [16, 25, 35, 50, 70, 95, 120] as const

export const leadArea = (job: Job): number => Math.max(job.practice.leadArea, sectionFor(job, 'conductors'))

export const bondArea = (job: Job): number => Math.max(job.practice.bondArea, sectionFor(job, 'metalwork'))

function sectionFor({ scenario }: Job, use: LeadUse): number {
  const { area } = askedArea(scenario, use, ({ shots }) => (scenario.control.blocksReclose ? 1 : shots))
  return sections.find((it) => it >= area) ?? Math.ceil(area)
}
