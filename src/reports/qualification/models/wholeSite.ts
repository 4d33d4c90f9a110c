/**
 * `whole-site`: one livening at a moment of a scenario's run, through everything: circuit, soil, relays, layers, bodies.
 * Site rise, fault current, what ends it and when; node voltages at its start; each person's exposure, the public's by its
 * path. With `ground: yes` where a pace is tolerable, with `corners: yes` each person's verdict over all corners of the
 * scenario's ranges.
 */
import {
  createSweepCache,
  declaredCorner,
  groundHazard,
  isUnsolvable,
  solveInstant,
  sweepSteps,
  type Exposure,
  type LiveMoment,
} from '../../../engine'
import type { Inputs } from '../inputs'
import { model, type Values } from '../model'
import { readMoment } from './siteMoment'

type SweepCache = ReturnType<typeof createSweepCache>

export const wholeSiteModel = model(
  'whole-site',
  (inputs, findText) => ({
    momentOf: readMoment(inputs, findText),
    livening: inputs.text('livening'),
    hasGround: isAsked(inputs, 'ground'),
    isJudged: isAsked(inputs, 'corners'),
  }),
  ({ momentOf, livening, hasGround, isJudged }) => {
    const moment = momentOf()
    const cache = createSweepCache()
    const instant = solveInstant(moment, livening, declaredCorner, { cache })
    if (isUnsolvable(instant)) return { noAnswer: `not solvable at node ${instant.node}: ${instant.reason}` }
    const { story, nodes } = instant
    return {
      siteRiseV: story.siteRise,
      liveCurrentA: story.liveCurrent,
      durationS: story.duration,
      endS: story.end,
      shots: story.shots.length,
      clearedBy: story.clearedBy,
      voltageV: Object.fromEntries(nodes.map(({ node, size }) => [node, size])),
      persons: Object.fromEntries(story.exposures.map((it) => [nameOf(it), shown(it)])),
      tolerableStepV: instant.tolerable.step,
      ...(hasGround ? groundOf(moment, livening, cache) : {}),
      ...(isJudged ? { verdicts: verdictsOf(moment, livening, cache) } : {}),
    }
  },
)

function nameOf({ person, path }: Pick<Exposure, 'path'> & { readonly person: string }): string {
  return person === 'bystander' ? path : person
}

function shown(exposure: Exposure): Values {
  const { path, bodyCurrent, prospectiveVoltage, zone, judged, limit, layer } = exposure
  return {
    path,
    currentA: bodyCurrent,
    prospectiveV: prospectiveVoltage,
    zone,
    judged,
    limit,
    ...(layer === null ? {} : { layer: layer.item, layerV: layer.voltage, layerDid: layer.did }),
  }
}

function isAsked(inputs: Inputs, key: string): boolean {
  return inputs.has(key) && inputs.oneOf(key, ['yes', 'no']) === 'yes'
}

function groundOf(moment: LiveMoment, livening: string, cache: SweepCache): Readonly<Record<string, string | Values>> {
  const ground = groundHazard(moment, livening, declaredCorner, { cache })
  if (isUnsolvable(ground)) throw new Error(`not solvable at node ${ground.node}: ${ground.reason}`)
  return {
    safeDistanceM: Object.fromEntries(ground.safeDistances.map(({ node, distance }) => [node, distance])),
    barrier: ground.barrier.isEnclosing ? 'encloses it' : 'does not enclose it',
  }
}

/** The moment as if it were a run of its own in which only this could happen. */
function verdictsOf({ site, bodies }: LiveMoment, livening: string, cache: SweepCache): Values {
  const livenings = site.scenario.livenings.filter((it) => it.id === livening)
  const scenario = { ...site.scenario, livenings }
  const steps = sweepSteps({ scenario, moments: [{ from: 0, site: { ...site, scenario }, bodies }] }, cache)
  let step = steps.next()
  while (!step.done) step = steps.next()
  return Object.fromEntries(step.value.worst.map((it) => [nameOf(it), it.verdict]))
}
