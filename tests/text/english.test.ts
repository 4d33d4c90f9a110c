// Nothing that can appear on a screen is without words, and no sentence has a placeholder that its speaker cannot write.

import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { actions, facts, gearCatalogue } from '../../src/engine'
import { exposurePaths } from '../../src/engine/hazard/paths'
import { english, makeSpeaker } from '../../src/text'
import { filesBelow, read } from '../support/sourceTree'

const speaker = makeSpeaker(english)
const missing = (keys: Iterable<string>) => [...new Set(keys)].filter((key) => !speaker.has(key)).sort()

test('every act, path, refusal and kind of gear has a name', () => {
  expect(missing([...actions.keys()].map((id) => `action.${id}`))).toEqual([])
  expect(missing(exposurePaths.map((path) => `path.${path.id}`))).toEqual([])
  expect(missing(facts.map((fact) => `refusal.${fact}`))).toEqual([])
  expect(missing([...gearCatalogue.keys()].map((id) => `gear.${id}`))).toEqual([])
})

test('every value and every choice that an order can ask for has a name', () => {
  const names = [...actions.values()].flatMap((action) =>
    Object.keys(action.values ?? {}).map((name) => `value.${name}`),
  )
  expect(missing(names)).toEqual([])
})

test('every key that the panels speak by name has words', () => {
  const spoken = filesBelow('src/app')
    .filter((path) => /\.tsx?$/.test(path))
    .flatMap((path) => [...read(path).matchAll(/speaker\.say\('([\w.-]+)'/g)].map((match) => match[1]!))
  const fromScenario = /^(scenario|pack|element|person|thing|livening)\./
  expect(missing(spoken.filter((key) => !fromScenario.test(key)))).toEqual([])
})

test('what is perceived in the recorded clean run is told in words', async () => {
  const { drawScenario, runTimeline } = await import('../../src/engine')
  const { readScenario } = await import('../../src/files/scenario/read')
  const { readRun } = await import('../../src/files/run/read')
  const scenario = readScenario(readFileSync('scenarios/marrow-bend/scenario.json', 'utf8'))
  const run = readRun(readFileSync('scenarios/marrow-bend/runs/clean-livened.json', 'utf8'), actions)
  if (!scenario.ok || !run.ok) throw new Error('the shipped files cannot be read')
  const { seed, purpose, orders } = run.value
  const { end } = runTimeline(drawScenario(scenario.value, seed, purpose), orders)
  expect(missing(end.evidence.map((line) => line.says))).toEqual([])
  expect(end.evidence.length).toBeGreaterThan(300)
})

test('a point is told by metres and the compass, a permit by its pole and points of isolation', () => {
  const said = speaker.say('did.walk-point', { who: 'gw', x: -6.5, y: -2.35 }).replace(/\u00a0/g, ' ')
  expect(said).toContain('a point 6.5 m west, 2.35 m south')
  expect(speaker.say('ground.no-services', { x: 1, y: 0 }).replace(/\u00a0/g, ' ')).toContain('1 m east, 0 m north')
  expect(speaker.say('control.permit', { readBack: 'P117 27 31' })).toContain(
    'permit for pole P117, between 27 and 31, is yours',
  )
  expect(speaker.say('control.permit', { readBack: 'P117 27' })).toContain(
    'permit for pole P117, isolated at 27, is yours',
  )
  expect(speaker.say('control.permit', { readBack: '#4711 P117 27 31 @54000' })).toContain(
    'permit for number 4711, pole P117, between 27 and 31 until 15:00:00, is yours',
  )
})

test('a count is told with the word for one or for many', () => {
  const told = (corners: number) => speaker.say('see.barrier', { corners })
  expect(told(1)).toBe('Barrier closed, 1 corner')
  expect(told(4)).toBe('Barrier closed, 4 corners')
  expect(told(1200).replace(/\u00a0/g, ' ')).toBe('Barrier closed, 1 200 corners')
  expect(speaker.say('see.barrier')).toBe('Barrier closed, – corners')
})
