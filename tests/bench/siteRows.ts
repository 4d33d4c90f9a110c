/** One site: an instant of it, a story, what each thing was worth, the map of its ground. */
import { fittedThings, groundVoltages, type GroundGrid } from '../../src/engine'
import { answerBody } from '../../src/engine/hazard/bodies/answerBody'
import { touchingBody } from '../../src/engine/hazard/bodies/touch'
import { answerBystander } from '../../src/engine/hazard/bystander'
import { viewPhase } from '../../src/engine/hazard/circuit/phaseView'
import { declaredCorner } from '../../src/engine/hazard/corner'

import { fittedOnce, lineOf, liven, scenarioInCorner, type LiveMoment } from '../../src/engine/hazard/liven'
import type { LineStory } from '../../src/engine/hazard/lineStory'
import { sharesOf } from '../../src/engine/hazard/share'
import { createSweepCache } from '../../src/engine/hazard/sweepCache'
import { isUnsolvable } from '../../src/engine/physics/network'
import {
  bondOn,
  coverOn,
  earthedSite,
  labelled,
  leftHandOnB,
  momentOf,
  person,
  standsAt,
  touching,
} from '../engine/hazard/sites'
import { timed, type Row } from './measure'

const livening = 'clash-b'

/** Everything fitted, everybody at something: hand on the line aloft, hand on the rod's lead, two on the ground. */
function fullSite(): LiveMoment {
  const site = earthedSite(
    bondOn,
    coverOn(),
    standsAt('gw', -3.5, 0.6),
    standsAt('pic', 2, -4),
    person('gw', { wears: ['BT-43'] }),
  )
  return momentOf(site, leftHandOnB, touching('gw', 'right-hand', { kind: 'lead', item: 'E-07', end: 'earth' }))
}

function requireLine(moment: LiveMoment, cache = createSweepCache()): LineStory {
  const line = lineOf(moment.site, livening, declaredCorner, cache)
  if (isUnsolvable(line)) throw new Error(`${line.reason} at ${line.node}`)
  return line
}

export function siteRows(): readonly Row[] {
  const moment = fullSite()
  return [instantRow(moment), ...storyRows(moment), shareRow(moment), mapRow(moment)]
}

/** The circuit factored and solved, everybody and the public in it; the soil is known. */
function instantRow(moment: LiveMoment): Row {
  const scenario = scenarioInCorner(moment.site.scenario, declaredCorner)
  const line = requireLine(moment)
  const [phase] = line.phases
  const { circuit, ground } = phase!.view
  const bodies = moment.bodies.map((body) => touchingBody(moment.site, scenario, body))
  const unknowns = phase!.view.factored().nodes.length
  const taken = timed(
    () => createSweepCache().factored,
    (store) => {
      const view = viewPhase(circuit, ground, store, 'bench')
      if (isUnsolvable(view)) throw new Error(view.reason)
      const alone: LineStory = { ...line, phases: [{ ...phase!, view }] }
      for (const body of bodies) answerBody(scenario, alone, body)
      answerBystander(scenario, alone, moment.site.barrier, fittedOnce(moment.site))
    },
    // compiled to the end only after about a thousand; a sweep has that behind it in its first second
    { first: 1000, counted: 201 },
  )
  return {
    name: 'one instant of a full site, soil known',
    unit: 'ms',
    ...taken,
    target: 1,
    note: `${unknowns} nodes, ${bodies.length} of the crew and the public; after 1000 others`,
  }
}

function storyRows(moment: LiveMoment): readonly Row[] {
  const { phases } = requireLine(moment)
  const cold = timed(createSweepCache, (cache) => liven(moment, livening, declaredCorner, cache), {
    first: 5,
    counted: 31,
  })
  const known = timed(
    () => {
      const cache = createSweepCache()
      requireLine(moment, cache)
      return cache.grounds
    },
    (grounds) => liven(moment, livening, declaredCorner, { ...createSweepCache(), grounds }),
    { first: 5, counted: 31 },
  )
  const note = `${phases.length} circuits, everybody in each`
  return [
    { name: 'one livening, its whole story, soil first', unit: 'ms', ...cold, target: 10, note },
    { name: 'the same, soil known', unit: 'ms', ...known, target: 10, note },
  ]
}

function shareRow(moment: LiveMoment): Row {
  const site = labelled('BT-43', {})(moment.site)
  const things = fittedThings(site).filter((it) => it.kind !== 'clamp').length
  const whom = { person: 'pw', path: 'hand-thigh', livening, layers: 'hold' } as const
  const taken = timed(
    () => {
      const cache = createSweepCache()
      liven(moment, livening, declaredCorner, cache)
      return cache
    },
    (cache) => {
      const shares = sharesOf(moment, whom, declaredCorner, cache)
      if (isUnsolvable(shares)) throw new Error(shares.reason)
    },
    { first: 1, counted: 3 },
  )
  return {
    name: 'share of what is fitted at one instant',
    unit: 'ms',
    ...taken,
    target: 300,
    note: `${Math.min(things, 10)} of ${things} things, ${2 ** Math.min(things, 10)} sites`,
  }
}

function mapRow(moment: LiveMoment): Row {
  const grid: GroundGrid = { from: { x: -20, y: -20 }, step: 40 / 511, columns: 512, rows: 512 }
  const cache = createSweepCache()
  liven(moment, livening, declaredCorner, cache)
  const taken = timed(
    () => undefined,
    () => groundVoltages(moment, livening, declaredCorner, grid, cache),
    { first: 3, counted: 9 },
  )
  return { name: 'map of the ground, 512 × 512', unit: 'ms', ...taken, target: 30, note: 'rms volts at each place' }
}
