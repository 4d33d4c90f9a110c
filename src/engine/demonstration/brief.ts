/** Job sheet, plan and the talk before the work. */
import { distance } from '../site/place'
import { groundPointOf } from '../site/questions'
import { leadArea } from './copper'
import { askCrossingsOut, keepCrossingsApart } from './crossing'
import type { Job } from './job'
import { needsOf } from './needs'
import { intended } from './rack'
import { conductorsOf, crossingFeeders, isCovering, isEarthedByNeutral } from './things'

export function brief(job: Job): void {
  const { crew, scenario, layout } = job
  const { pic, gw } = crew
  job.order(pic, 'read-order', { values: { sources: sourcesOf(job) } })
  job.order(pic, 'choose-earths', {
    values: { place: 'work-position', arrangement: 'chain', area: leadArea(job) },
  })
  job.order(gw, 'park-truck', { values: { at: layout.truck } })
  job.order(pic, 'check-crew')
  job.order(pic, 'read-weather')
  for (const on of hazardsOf(job)) job.order(pic, 'mark-hazard', { on })
  answer(job)
  job.order(pic, 'write-plan', { values: { cards: planOf(job) } })
  askCrossingsOut(job)
  for (const { id } of scenario.feeders) job.order(pic, 'ask-reclose-block', { on: id })
  keepCrossingsApart(job)
  job.order(pic, 'walk', { values: { to: layout.reading } })
  job.order(pic, 'match-pole', { on: 'pole' })
  job.wait()
  gatherRound(job)
  job.order(pic, 'hold-briefing')
  job.wait()
  for (const who of job.everybody) job.order(who, 'sign-on')
  job.wait()
}

/** Whoever stands too far off to hear comes near. */
function gatherRound(job: Job): void {
  const { pic } = job.crew
  for (const who of job.everybody) {
    if (distance(groundPointOf(job.site(), who), groundPointOf(job.site(), pic)) <= hearing) continue
    const { x, y } = job.layout.reading
    job.order(who, 'walk', { values: { to: { x: x + Math.sign(x), y: y + Math.sign(y) } } })
  }
  job.wait()
}

/** A voice carries so far, metres (common practice, no source). */
const hearing = 15

/** Whatever could feed the section: feeders, the low voltage on the pole, the switches between. */
function sourcesOf({ scenario }: Job): readonly string[] {
  const { feeders, lv, switches } = scenario
  const wires = lv.wires.length > 0 ? ['lv'] : []
  return [...feeders.map(({ id }) => id), ...wires, ...switches.map(({ id }) => id)].sort()
}

/** What a trained eye takes for a hazard; nothing that the seed draws. */
const hazardsOf = ({ scenario }: Job): readonly string[] =>
  scenario.hazards
    .filter(({ real }) => real)
    .map(({ id }) => id)
    .sort()

function answer(job: Job): void {
  const [from = 'nowhere'] = crossingFeeders(job)
  job.order(job.crew.pic, 'answer-livening', { values: { possible: 'yes', from, control: 'block-reclose' } })
}

/** The cards of the plan: act, item, place. */
function planOf(job: Job): readonly string[] {
  const needs = needsOf(job)
  const item = (name: string): string => {
    const need = needs.find((it) => it.name === name)
    return (need && intended(job, need)) ?? ''
  }
  const conductors = conductorsOf(job)
  return [
    ...(isEarthedByNeutral(job) ? [] : [`drive-rod:${item('rod')}:ground`]),
    `clamp-earth-end:${item('lead')}:${isEarthedByNeutral(job) ? 'pole-earth' : `rod/${item('rod')}`}`,
    ...conductors.map((on) => `test:${item('detector')}:${on}`),
    ...conductors.map((on) => `clamp:${item('lead')}:${on}`),
    ...(isCovering(job) ? [`fit-cover:${item('cover')}:pole`] : []),
    `bond-metal:${item('bond')}:arm`,
    `bond-line:${item('bond')}:${job.scenario.work.conductor}`,
  ]
}
