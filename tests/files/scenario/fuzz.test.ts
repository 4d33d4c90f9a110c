/** Scenario files by chance: never a throw; and what is read can be played and solved, or says that it cannot. */
import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import {
  actions,
  declaredCorner,
  drawScenario,
  liven,
  runTimeline,
  startSite,
  type Moment,
  type ScenarioBase,
} from '../../../src/engine'
import { readRun } from '../../../src/files/run/read'
import { readScenario } from '../../../src/files/scenario/read'
import { marrowBendBase, marrowBendText } from '../../support/marrowBend'

type Node = Record<string | number, unknown>

/** Paths to everything in the file, and to its numbers. */
function pathsIn(value: unknown, isWanted: (held: unknown) => boolean): readonly (readonly (string | number)[])[] {
  if (typeof value !== 'object' || value === null) return []
  const keys: readonly (string | number)[] = Array.isArray(value) ? value.map((_, i) => i) : Object.keys(value)
  return keys.flatMap((key) => {
    const held = (value as Node)[key]
    const own = isWanted(held) ? [[key]] : []
    return [...own, ...pathsIn(held, isWanted).map((path) => [key, ...path])]
  })
}

const fresh = (): Node => JSON.parse(marrowBendText()) as Node
const holderOf = (file: Node, path: readonly (string | number)[]): Node =>
  path.slice(0, -1).reduce<Node>((node, key) => Object(node[key]) as Node, file)

const everything = pathsIn(fresh(), () => true)
const physics = pathsIn(fresh(), (held) => typeof held === 'number').filter(([first]) =>
  [
    'soil',
    'pole',
    'conductors',
    'section',
    'feeders',
    'lv',
    'stay',
    'contact',
    'frequencyHz',
    'publicApproachM',
  ].includes(String(first)),
)

it('gives issues, or a scenario that can be drawn and begun, for any value anywhere', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.constantFrom(...everything), fc.jsonValue({ maxDepth: 3 })), { minLength: 1, maxLength: 4 }),
      (changes) => {
        const file = fresh()
        for (const [path, value] of changes) holderOf(file, path)[path.at(-1)!] = value
        const read = readScenario(JSON.stringify(file))
        if (read.ok) expect(startSite(drawScenario(read.value, 5, 'assess')).time).toBe(0)
        else
          expect(read.issues.every((it) => it.path.startsWith('$') && it.found !== '' && it.allowed !== '')).toBe(true)
      },
    ),
    { numRuns: 400, examples: [[[[['feeders', 1, 'conductors', 2, 'xM'], '']]]] },
  )
})

/** Earths, cover and bond on, a hand on the conductor. */
const working = momentOf('swap-insulator')

function momentOf(act: string): Moment {
  const file = new URL('../../../scenarios/marrow-bend/runs/clean.json', import.meta.url)
  const run = readRun(readFileSync(file, 'utf8'), actions)
  if (!run.ok) throw new Error(JSON.stringify(run.issues))
  const scenario = drawScenario(marrowBendBase(), run.value.seed, run.value.purpose)
  const timeline = runTimeline(scenario, run.value.orders)
  const index = timeline.entries.findIndex((it) => it.order.do === act && it.outcome === 'done')
  return timeline.moments.find((it) => it.busy.includes(index))!
}

it('lets through only what the circuit can be asked about: an answer, or that it cannot be solved', () => {
  let asked = 0
  const ask = (base: ScenarioBase): void => {
    asked++
    const site = { ...working.site, scenario: drawScenario(base, 5, 'practise') }
    const answer = liven({ site, bodies: working.bodies }, 'clash-b', declaredCorner)
    expect(['story', 'unsolvable']).toContain(answer.kind)
  }
  const factor = fc.constantFrom(0, 1e-3, 0.1, 0.5, 2, 10, 1e3, -1)
  fc.assert(
    fc.property(fc.constantFrom(...physics), factor, (path, by) => {
      const file = fresh()
      const holder = holderOf(file, path)
      holder[path.at(-1)!] = (holder[path.at(-1)!] as number) * by
      const read = readScenario(JSON.stringify(file))
      if (read.ok) ask(read.value)
    }),
    { numRuns: 150, seed: 20310514 },
  )
  expect(asked).toBeGreaterThan(50)
}, 120_000)
