// Plants each defect of defects.json, one at a time, and expects the test that it names to fail because of it.
// A defect whose text is not in its file exactly once, and a name that meets no test, fail as well.
// The last line says how many were caught: `N passed, N failed`.

import { spawn } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { availableParallelism } from 'node:os'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../..', import.meta.url))
const asked = process.argv.slice(2)
const all = JSON.parse(readFileSync(new URL('defects.json', import.meta.url), 'utf8'))
const defects = asked.length > 0 ? all.filter((it) => asked.includes(it.id)) : all

/** @returns {Promise<string | undefined>} what is wrong; undefined when the defect was caught */
async function plant(defect) {
  const found = readFileSync(`${root}/${defect.file}`, 'utf8').split(defect.find).length - 1
  if (found !== 1) return `its text stands ${found} times in ${defect.file}`
  const sound = await runSound(defect)
  if (sound.passed === 0) return `no test of that name passes in ${defect.test.file} without it`
  const spoiled = await run(defect, true)
  return spoiled.failed > 0 ? undefined : 'nobody noticed'
}

const soundRuns = new Map()

/** One run without a defect is enough for all that name the same test. */
function runSound(defect) {
  const name = JSON.stringify(defect.test)
  if (!soundRuns.has(name)) soundRuns.set(name, run(defect, false))
  return soundRuns.get(name)
}

function run(defect, isPlanted) {
  const { file, find, replace, test } = defect
  const pattern = test.name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
  const options = ['run', '--config', 'tests/seeded/seeded.vitest.mjs', test.file, '-t', pattern, '--reporter', 'json']
  return new Promise((resolve) => {
    const env = { ...process.env, NO_COLOR: '1' }
    if (isPlanted) env.defect = JSON.stringify({ file, find, replace })
    const child = spawn(process.execPath, ['node_modules/vitest/vitest.mjs', ...options], { cwd: root, env })
    let output = ''
    child.stdout.on('data', (text) => (output += text))
    child.on('close', () => {
      const start = output.indexOf('{"numTotal')
      const report = start < 0 ? {} : JSON.parse(output.slice(start))
      resolve({ passed: report.numPassedTests ?? 0, failed: report.numFailedTests ?? 0 })
    })
  })
}

let next = 0
let failed = 0
async function work() {
  for (let defect = defects[next++]; defect !== undefined; defect = defects[next++]) {
    const wrong = await plant(defect)
    if (wrong !== undefined) failed += 1
    console.log(
      `${wrong === undefined ? 'caught' : 'failed'}  ${defect.id}: ${defect.what}${wrong ? ` — ${wrong}` : ''}`,
    )
  }
}
await Promise.all(Array.from({ length: availableParallelism() }, work))
console.log(`${defects.length - failed} passed, ${failed} failed`)
process.exit(failed > 0 ? 1 : 0)
