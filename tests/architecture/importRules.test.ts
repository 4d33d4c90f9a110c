// Each import rule of .ci/dependencies.mjs finds the violation that is planted for it in a small tree of its own.

import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { cruise, type ICruiseOptions, type ICruiseResult } from 'dependency-cruiser'
import { afterAll, beforeAll, expect, test } from 'vitest'
import config, { engineLayers } from '../../.ci/dependencies.mjs'
import { foldersBelow } from '../support/sourceTree'

const tree: Record<string, string> = {
  // What the files below import, kept free of faults.
  'src/engine/index.ts': "export * from './debrief/total'",
  'src/engine/debrief/total.ts': 'export const total = 1',
  'src/engine/units/volt.ts': 'export type Volt = number',
  'src/text/english.ts': 'export const english = 1',
  'src/cli/main.ts': "import '../engine'; import 'node:fs'",
  'src/app/main.tsx': "import '../engine'; import 'react'; import './stores/settings'",
  'src/app/stores/settings.ts': "import { total } from '../../engine'; export const settings = total",
  'src/app/panels/Depot.tsx': 'export const depot = 1',
  'tests/some.test.ts': 'export const some = 1',
  'node_modules/@stdlib/exp/index.js': 'module.exports = 1',
  'node_modules/valibot/index.js': 'module.exports = 1',
  'node_modules/react/index.js': 'module.exports = 1',
}

/** One violation for each rule; a file is named after the rule that must find it. */
const violations: Record<string, [path: string, source: string]> = {
  'engine-is-closed': ['src/engine/site/closed.ts', "import type { x } from 'valibot'; export type Y = x"],
  'math-takes-one-library': ['src/engine/math/library.ts', "import 'valibot'"],
  'math-library-stays-in-math': ['src/engine/site/exp.ts', "import '@stdlib/exp'"],
  'physics-are-strangers': ['src/engine/physics/soil/stranger.ts', "import '../body/body'"],
  'engine-has-one-door': ['src/cli/door.ts', "import type { Volt } from '../engine/units/volt'; export type V = Volt"],
  'engine-does-not-use-its-door': ['src/engine/debrief/door.ts', "import '..'"],
  'files-scope': ['src/files/scope.ts', "import '../text/english'"],
  'text-scope': ['src/text/scope.ts', "import 'valibot'"],
  'reports-scope': ['src/reports/scope.ts', "import '../app/panels/Depot'"],
  'records-scope': ['src/records/scope.ts', "import '../app/panels/Depot'"],
  'app-and-cli-are-apart': ['src/cli/app.ts', "import '../app/panels/Depot'"],
  'node-stays-in-cli': ['src/app/input/node.ts', "import 'node:fs'"],
  'react-stays-in-app': ['src/files/react.ts', "import 'react'"],
  'stores-are-headless': ['src/app/stores/screen.ts', "import 'react'"],
  'scene-and-panels-meet-in-stores': ['src/app/scene/meet.ts', "import '../panels/Depot'"],
  'src-does-not-know-tests': ['src/text/tests.ts', "import '../../tests/some.test'"],
  'no-cycles': ['src/text/cycle.ts', "import './cycleBack'"],
  'no-orphans': ['src/text/orphan.ts', 'export const alone = 1'],
  'no-unresolved': ['src/text/unresolved.ts', "import './nowhere'"],
}

for (const [depth, layer] of engineLayers.slice(0, -1).entries()) {
  violations[`engine-layer-${layer}`] = [
    `src/engine/${layer}/${layer === 'physics' ? 'body/' : ''}upward.ts`,
    `import '../${layer === 'physics' ? '../' : ''}${engineLayers[depth + 1]}/above'`,
  ]
  tree[`src/engine/${engineLayers[depth + 1]}/above.ts`] = 'export const above = 1'
}
tree['src/engine/physics/body/body.ts'] = 'export const body = 1'
tree['src/text/cycleBack.ts'] = "import './cycle'"

let place: string
let found: { rule: string; from: string }[]

beforeAll(async () => {
  place = mkdtempSync(join(tmpdir(), 'import-rules-'))
  for (const [path, source] of [...Object.entries(tree), ...Object.values(violations)]) {
    mkdirSync(dirname(join(place, path)), { recursive: true })
    writeFileSync(join(place, path), source)
  }
  const options = {
    ...config.options,
    tsConfig: {},
    baseDir: place,
    validate: true,
    ruleSet: { forbidden: config.forbidden },
  }
  const { output } = await cruise(['src', 'tests'], options as unknown as ICruiseOptions)
  found = (output as ICruiseResult).summary.violations.map(({ rule, from }) => ({ rule: rule.name, from }))
}, 30_000)

afterAll(() => rmSync(place, { recursive: true, force: true }))

test.each(Object.entries(violations))('%s finds its violation', (rule, [path]) => {
  expect(found).toContainEqual({ rule, from: path })
})

test('every rule has a violation planted for it', () => {
  expect(config.forbidden.map((rule) => rule.name).sort()).toEqual(Object.keys(violations).sort())
})

test('what is allowed is not complained about', () => {
  const faultless = ['src/cli/main.ts', 'src/app/main.tsx', 'src/app/stores/settings.ts', 'src/engine/index.ts']
  expect(found.filter(({ from }) => faultless.includes(from))).toEqual([])
})

test('every folder of the engine is a layer, so that none escapes the order', () => {
  const folders = foldersBelow('src/engine').filter((path) => path.split('/').length === 3)
  const names = folders.map((path) => path.split('/')[2])
  expect(names.filter((name) => name !== 'version' && !engineLayers.includes(name!))).toEqual([])
})
