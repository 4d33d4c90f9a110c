/**
 * The same through a whole recorded job: with the next defect of every item put on it, round by round, the crew knows
 * nothing else than before, but for what the acts that find a defect tell of that item.
 */
import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import {
  actions,
  believe,
  drawScenario,
  gearCatalogue,
  runTimeline,
  type GearDefect,
  type Scenario,
  type Timeline,
} from '../../../src/engine'
import { readRun } from '../../../src/files/run/read'
import { marrowBendBase } from '../../support/marrowBend'

const file = new URL('../../../scenarios/marrow-bend/runs/clean.json', import.meta.url)
const recorded = readRun(readFileSync(file, 'utf8'), actions)
if (!recorded.ok) throw new Error(JSON.stringify(recorded.issues))
const { orders, seed, purpose } = recorded.value
const scenario = drawScenario(marrowBendBase(), seed, purpose)
const timeline = runTimeline(scenario, orders)

const most = Math.max(...[...gearCatalogue.values()].map((type) => type.defects.length))

/** The defect of an item that is its turn. */
function defectOf(type: string, round: number): GearDefect | undefined {
  return gearCatalogue.get(type)?.defects[round]
}

function withDefects(round: number): Scenario {
  const items = scenario.items.map((item) => {
    const defect = defectOf(item.type, round)
    if (!defect || item.defects.includes(defect.id)) return item
    const label = defect.foundBy === 'label' ? { ...item.label, due: '2001-01-01' } : item.label
    return { ...item, label, defects: [...item.defects, defect.id] }
  })
  return { ...scenario, items }
}

/** What is known after each act, without what the finding acts told of the defects in question. */
function known(of: Timeline, round: number): readonly string[] {
  const isFound = (it: { readonly of: string; readonly by: string }): boolean => {
    const item = scenario.items.find((each) => each.id === it.of)
    return item !== undefined && defectOf(item.type, round)?.foundBy === it.by
  }
  return of.entries.map(({ after }) => {
    const belief = believe(after)
    const items = belief.items.map((item) => ({
      ...item,
      label: defectOf(item.type, round)?.foundBy === 'label' ? null : item.label,
      evidence: item.evidence.filter((it) => !isFound(it)),
    }))
    return JSON.stringify({ ...belief, items, evidence: belief.evidence.filter((it) => !isFound(it)) })
  })
}

/**
 * Acts in whose course gear shows of itself that something is wrong: the reel of the barrier runs out, a tester says
 * nothing where there is voltage, a jaw slips when it is tugged, a stick slips off the screw that it turns.
 */
const shown = ['set-barrier', 'prove', 'test', 'clamp', 'tug']

it.each(Array.from({ length: most }, (_, round) => round))('round %i', (round) => {
  const other = runTimeline(withDefects(round), orders)
  const [before, after] = [known(timeline, round), known(other, round)]
  const first = before.findIndex((belief, i) => belief !== after[i])
  const order = timeline.entries[first]?.order
  if (order) expect(shown, JSON.stringify(order)).toContain(order.do)
  expect(after).toHaveLength(before.length)
  // The gear stage, where everything is turned over and tested, lies well before any of them.
  expect(first < 0 || first > timeline.entries.findIndex((it) => it.order.do === 'take-permit')).toBe(true)
})
