/**
 * `npm run soak -- [seeds] [scenario …] [--pack=…]`: the job of every scenario done and graded for so many seeds (200), as
 * many scenarios at a time as there are cores. Prints a table, what declined, what came over a limit and why, and one digest
 * of all results: the same on every machine. Exit code 1 when a seed is stuck or an exposure unexplained.
 */
import { spawn } from 'node:child_process'
import { availableParallelism } from 'node:os'
import { fileURLToPath } from 'node:url'
import { digestOfText } from '../../src/files/digest'
import { scenarioSlugs } from '../support/record/shelf'
import type { SeedReport } from './soakSeed'

const words = process.argv.slice(2).filter((it) => !it.startsWith('--'))
const seeds = Number(words.find((it) => /^\d+$/.test(it)) ?? 200)
const wanted = words.filter((it) => !/^\d+$/.test(it))
const pack = process.argv.find((it) => it.startsWith('--pack='))?.slice('--pack='.length)
const slugs = scenarioSlugs().filter((slug) => wanted.length === 0 || wanted.includes(slug))

const root = fileURLToPath(new URL('../..', import.meta.url))
const began = Date.now()
const reports = new Map<string, readonly SeedReport[]>()
const left = [...slugs]
let printed = 0
await Promise.all(Array.from({ length: availableParallelism() }, workThrough))
finish()

async function workThrough(): Promise<void> {
  for (let slug = left.shift(); slug !== undefined; slug = left.shift()) {
    reports.set(slug, await soak(slug))
    printReady()
  }
}

/** In the order of the shelf, each as soon as it and those before it are there. */
function printReady(): void {
  for (let slug = slugs[printed]; slug !== undefined && reports.has(slug); slug = slugs[printed]) {
    print(slug, reports.get(slug) ?? [])
    printed += 1
  }
}

function soak(slug: string): Promise<readonly SeedReport[]> {
  const program = ['node_modules/tsx/dist/cli.mjs', 'tests/soak/soakScenario.ts', slug, '1', String(seeds)]
  const child = spawn(process.execPath, [...program, ...(pack === undefined ? [] : [pack])], { cwd: root })
  let out = ''
  let err = ''
  child.stdout.on('data', (text: Buffer) => (out += text.toString()))
  child.stderr.on('data', (text: Buffer) => (err += text.toString()))
  return new Promise((resolve, reject) => {
    child.on('close', (status) => {
      if (status !== 0) reject(new Error(`${slug}: ${err}`))
      else
        resolve(
          out
            .trim()
            .split('\n')
            .map((line) => JSON.parse(line) as SeedReport),
        )
    })
  })
}

function print(slug: string, all: readonly SeedReport[]): void {
  const count = (isMeant: (it: SeedReport) => boolean): number => all.filter(isMeant).length
  const zones = [...new Set(all.map(({ worstZone }) => worstZone))].sort().join(', ')
  const pace = Math.max(...all.map((it) => it.pace))
  console.log(`\n${slug}`)
  console.log(
    `  done ${count((it) => it.ending === 'done')}, declined ${count((it) => it.ending.startsWith('declined'))}, stuck ${count(isStuck)}; ` +
      `pass ${count((it) => it.outcome === 'pass')}, provisional ${count((it) => it.outcome === 'provisional')}, fail ${count((it) => it.outcome === 'fail')}; ` +
      `came alive ${count((it) => it.struck !== null)}`,
  )
  console.log(`  crew in ${zones}; bystander's pace at most ${pace.toPrecision(3)} of tolerable`)
  list(all.map((it) => it.ending).filter((it) => it !== 'done'))
  list(all.flatMap((it) => it.findings))
  list(all.flatMap((it) => it.over))
}

/** Each line once, with how often it came. */
function list(lines: readonly string[]): void {
  const counted = new Map<string, number>()
  for (const line of lines) counted.set(line, (counted.get(line) ?? 0) + 1)
  for (const [line, times] of [...counted].sort(([a], [b]) => (a < b ? -1 : 1))) console.log(`    ${times} x ${line}`)
}

function isStuck({ ending }: SeedReport): boolean {
  return ending.startsWith('stuck')
}

function finish(): void {
  const all = slugs.flatMap((slug) => reports.get(slug) ?? [])
  const digest = digestOfText(all.map((it) => it.digest).join('\n'))
  const stuck = all.filter(isStuck).length
  const unexplained = all.filter((it) => it.over.some((line) => line.endsWith('unexplained'))).length
  const seconds = Math.round((Date.now() - began) / 1000)
  console.log(
    `\n${all.length} runs in ${seconds} s; ${stuck} stuck, ${unexplained} with an unexplained exposure; digest ${digest}`,
  )
  process.exitCode = stuck + unexplained > 0 ? 1 : 0
}
