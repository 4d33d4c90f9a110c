// Every check of the project, in one command: `npm test`, or `npm test -- types unit` for the named steps alone.
// All steps run even when one fails, so that one run shows everything. The last line counts each tool as one check and
// each test and case as itself: `N passed, N failed`; the exit code is 1 when anything failed.
// Node built-ins only: this starts before node_modules exists.

import { spawn } from 'node:child_process'
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { availableParallelism } from 'node:os'
import { join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'
import { countClosingLine, countImportRules, countOne, countPreparation, countVitest } from './counts.mjs'
import { ensureBuilt, ensureReady } from './ensure.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
const reports = join(root, 'node_modules/.cache/earths-on')
const longestOutput = 100
const tool = (path) => [process.execPath, join('node_modules', path)]
const cli = [...tool('tsx/dist/cli.mjs'), 'src/cli/main.ts']

/**
 * A step either `does` something itself or runs `command`. `count` says how much was checked, from the output and the
 * exit code; without it the step is one check, passed when the exit code is 0.
 * Steps of one group run side by side, as many as there are cores.
 */
const groups = [
  [{ name: 'install', does: ensureReady, count: (_output, status) => countPreparation(status) }],
  [
    { name: 'types', command: [...tool('typescript/bin/tsc'), '-p', 'tsconfig.json'] },
    { name: 'engine-types', command: [...tool('typescript/bin/tsc'), '-p', '.ci/engine.tsconfig.json'] },
    { name: 'lint', command: [...tool('eslint/bin/eslint.js'), '--config', '.ci/eslint.config.mjs', '.'] },
    {
      name: 'format',
      command: [...tool('@biomejs/biome/bin/biome'), 'format', '--config-path=.ci/format.json', '.'],
      remedy: 'npm run fix',
    },
    {
      name: 'import-rules',
      command: [
        ...tool('dependency-cruiser/bin/dependency-cruise.mjs'),
        '--config',
        '.ci/dependencies.mjs',
        'src',
        'tests',
      ],
      count: countImportRules,
    },
    { name: 'dead-code', command: [...tool('knip/bin/knip.js'), '--config', '.ci/knip.jsonc', '--no-config-hints'] },
  ],
  [vitest('unit')],
  [
    {
      name: 'qualification',
      command: [...cli, 'qualify'],
      count: countClosingLine,
      isWorthShowing: (line) => !line.startsWith('passed'),
    },
    {
      name: 'seeded-defects',
      command: [process.execPath, 'tests/seeded/plantDefects.mjs'],
      count: countClosingLine,
      isWorthShowing: (line) => !line.startsWith('caught'),
    },
    { name: 'scenarios', command: [...cli, 'check', 'scenarios'] },
  ],
  [{ name: 'build', does: ensureBuilt }],
  [vitest('browser')],
]

function vitest(project) {
  const report = join(reports, `${project}.json`)
  return {
    name: project,
    before: () => rmSync(report, { force: true }),
    command: [
      ...[...tool('vitest/vitest.mjs'), 'run', '--project', project],
      ...['--reporter', 'dot', '--reporter', 'json', `--outputFile.json=${report}`],
    ],
    count: (_output, status) => countVitest(existsSync(report) ? readFileSync(report, 'utf8') : undefined, status),
  }
}

async function runStep(step) {
  const start = performance.now()
  const { output, status } = await (step.does ? doHere(step) : runCommand(step))
  const counted = step.count?.(output, status) ?? countOne(status)
  report(step, counted, output, (performance.now() - start) / 1000)
  return counted
}

async function doHere(step) {
  try {
    return { output: (await step.does()) ?? '', status: 0 }
  } catch (error) {
    return { output: error.message, status: 1 }
  }
}

function runCommand(step) {
  step.before?.()
  const [program, ...parameters] = step.command
  return new Promise((resolve) => {
    const env = { ...process.env, NO_COLOR: '1', FORCE_COLOR: '0' }
    const child = spawn(program, parameters, { cwd: root, env, stdio: ['ignore', 'pipe', 'pipe'] })
    let output = ''
    child.stdout.on('data', (text) => (output += text))
    child.stderr.on('data', (text) => (output += text))
    child.on('error', (error) => resolve({ output: error.message, status: 1 }))
    child.on('close', (status) => resolve({ output, status: status ?? 1 }))
  })
}

function report(step, { passed, failed, skipped = 0 }, output, seconds) {
  const counts = [failed && `${failed} failed`, `${passed} passed`, skipped && `${skipped} skipped`].filter(Boolean)
  const note = step.does && !failed ? output : counts.join(', ')
  console.log(`${failed ? '✗' : '✓'} ${step.name.padEnd(14)} ${seconds.toFixed(1).padStart(6)} s   ${note}`)
  if (!failed) return
  // Indented, so that no line of a tool can be taken for our closing line.
  const lines = output
    .trim()
    .split('\n')
    .filter(step.isWorthShowing ?? (() => true))
  for (const line of lines.slice(0, longestOutput)) console.log(`    ${line}`)
  const left = lines.length - longestOutput
  if (left > 0) console.log(`    … ${left} more lines in ${keep(step, output)}`)
  if (step.remedy) console.log(`    To put it right: ${step.remedy}`)
}

function keep(step, output) {
  const file = join(reports, `${step.name}.log`)
  writeFileSync(file, output)
  return relative(root, file)
}

/** As many at a time as there are cores. */
async function runGroup(steps) {
  const waiting = [...steps]
  const results = []
  const worker = async () => {
    for (let step = waiting.shift(); step; step = waiting.shift()) results.push(await runStep(step))
  }
  await Promise.all(Array.from({ length: Math.min(availableParallelism(), steps.length) }, worker))
  return results
}

function chooseGroups(names) {
  const known = groups.flat().map((step) => step.name)
  const unknown = names.filter((name) => !known.includes(name))
  if (unknown.length > 0) {
    console.error(`No step is called ${unknown.join(', ')}. The steps are: ${known.join(', ')}`)
    process.exit(2)
  }
  const isWanted = (step) => names.length === 0 || names.includes(step.name) || step.name === 'install'
  return groups.map((steps) => steps.filter(isWanted))
}

const results = []
for (const steps of chooseGroups(process.argv.slice(2))) {
  results.push(...(await runGroup(steps)))
  if (steps[0]?.name !== 'install') continue
  // Without the packages no other step can say anything.
  if (results[0].failed) break
  mkdirSync(reports, { recursive: true })
}
const sum = (key) => results.reduce((total, result) => total + result[key], 0)
console.log(`\n${sum('passed')} passed, ${sum('failed')} failed`)
process.exitCode = sum('failed') > 0 ? 1 : 0
