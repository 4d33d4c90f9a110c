/**
 * Exit codes, issues on standard error, nothing on standard output when it is 2. Each way in is started once as the
 * program that a person starts; what only needs the answer of a verb asks the verb.
 */
import { spawn } from 'node:child_process'
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { answerOfVerb, type Ended } from '../support/answerOfVerb'
import { marrowBendText } from '../support/marrowBend'

const root = fileURLToPath(new URL('../..', import.meta.url))
const tsx = join(root, 'node_modules/tsx/dist/cli.mjs')
let folder = ''

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'earths-on-'))
})
afterAll(() => {
  rmSync(folder, { recursive: true })
})

/** Several may be under way at once. */
function program(parameters: readonly string[], input = ''): Promise<Ended> {
  const child = spawn(process.execPath, [tsx, 'src/cli/main.ts', ...parameters], { cwd: root })
  const said = { out: '', err: '' }
  child.stdout.setEncoding('utf8').on('data', (text: string) => (said.out += text))
  child.stderr.setEncoding('utf8').on('data', (text: string) => (said.err += text))
  child.stdin.end(input)
  return new Promise((resolve, reject) => {
    child.on('error', reject)
    child.on('close', (code) => resolve({ code, ...said }))
  })
}

function write(name: string, text: string): string {
  const place = join(folder, name)
  writeFileSync(place, text)
  return place
}

const scenario = marrowBendText()

describe('exit 2, nothing written', () => {
  const hostile: readonly (readonly [string, string, string])[] = [
    ['truncated', scenario.slice(0, 4000), '$'],
    ['trailing', `${scenario}{}`, '$'],
    ['newer', scenario.replace('"version": 1', '"version": 2'), '$.version'],
    ['unknown-key', scenario.replace('"frequencyHz"', '"surprise": 1, "frequencyHz"'), '$.surprise'],
    ['wrong-unit', scenario.replace('"horizonS": 60', '"horizonMs": 60000'), '$.horizonMs'],
    ['dangling', scenario.replace('"conductor": "conductor-b"', '"conductor": "conductor-z"'), '$.work.conductor'],
    ['duplicate-id', scenario.replace('"id": "E-08"', '"id": "E-07"'), '$.items[1].id'],
    ['duplicate-key', scenario.replace('"frequencyHz": 50', '"frequencyHz": 50, "frequencyHz": 50'), '$.frequencyHz'],
    ['proto', scenario.replace('"frequencyHz"', '"__proto__": {"x": 1}, "frequencyHz"'), '$.__proto__'],
    ['nested', '['.repeat(100_000), '$'],
    ['infinite', scenario.replace('"frequencyHz": 50', '"frequencyHz": 1e400'), '$.frequencyHz'],
    ['oversized', `${scenario}${' '.repeat(5_000_000)}`, '$'],
    ['not-json', 'earths on', '$'],
    ['empty', '', '$'],
  ]

  it('for every hostile file, all of them told at once', async () => {
    const places = hostile.map(([name, text]) => write(`${name}.json`, text))
    const { code, out, err } = await program(['check', ...places])
    expect(code).toBe(2)
    expect(out).toBe('')
    const lines = err.trim().split('\n')
    for (const [name, , path] of hostile) {
      const told = lines.filter((line) => line.startsWith(`${join(folder, `${name}.json`)}: ${path}`))
      expect(told.length, name).toBeGreaterThan(0)
      for (const line of told) expect(line).toMatch(/: found .+; allowed: .+/)
    }
    expect(err).not.toMatch(/ at .*\.ts:\d+/)
  })

  it('also when it comes on standard input, and when other files are fine', async () => {
    const fine = write('fine.json', scenario)
    const { code, out, err } = await program(['check', fine, '-'], '{"a":1,"a":2}')
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err).toContain('-: $.a: found "a" again, line 1; allowed: each key once')
  })

  it('for a verb, an option, a file or a format that there is not', async () => {
    const wrong: readonly (readonly [readonly string[], string])[] = [
      [[], 'The verbs are: check'],
      [['dance'], 'No verb is called dance'],
      [['check'], 'usage: check'],
      [['check', '--loud', scenario], 'usage: check'],
      [['check', join(folder, 'nowhere.json')], 'nowhere.json'],
      [['grade', 'scenarios/marrow-bend'], 'usage: grade'],
      [['expose', 'scenarios/marrow-bend', join(folder, 'nowhere.json')], 'nowhere.json'],
      [['schema', 'poem'], 'the formats are'],
    ]
    for (const [parameters, told] of wrong) {
      const { code, out, err } = await answerOfVerb(...parameters)
      expect({ code, out }, parameters.join(' ')).toEqual({ code: 2, out: '' })
      expect(err).toContain(told)
    }
    expect(await program(['dance'])).toEqual(await answerOfVerb('dance'))
  })
})

describe('exit 0', () => {
  it('for a file that is fine, from a place or from standard input', async () => {
    expect(await program(['check', '-'], scenario)).toEqual({ code: 0, out: '-: fine\n', err: '' })
    const { code, out } = await answerOfVerb('check', 'scenarios/marrow-bend/scenario.json', '--json')
    expect(code).toBe(0)
    expect(JSON.parse(out)).toEqual([{ place: 'scenarios/marrow-bend/scenario.json', faults: [] }])
  })

  it('for the JSON Schema of each format', async () => {
    for (const format of ['scenario', 'rule-pack', 'run', 'words']) {
      const { code, out } = await answerOfVerb('schema', format)
      expect(code).toBe(0)
      expect(JSON.parse(out)).toMatchObject({
        $schema: expect.stringContaining('json-schema.org'),
        title: `earths-on/${format}`,
      })
    }
  })
})

describe('recorded runs', () => {
  const cleanRun = 'scenarios/marrow-bend/runs/clean.json'
  const runs = readdirSync(join(root, 'scenarios/marrow-bend/runs'))

  it('are graded: 0 when all pass, 1 when one does not', async () => {
    expect(runs).toContain('clean.json')
    const clean = await answerOfVerb('grade', 'scenarios/marrow-bend', cleanRun, '--no-sweep', '--json')
    // Without the sweep nothing passes: the exposures were not looked at.
    expect(clean.code).toBe(1)
    expect(JSON.parse(clean.out)).toMatchObject({ format: 'earths-on/result', version: 1, outcome: 'provisional' })
    const all = await program(['grade', 'scenarios/marrow-bend', 'scenarios/marrow-bend/runs', '--no-sweep', '--json'])
    expect(all.code).toBe(1)
    expect(all.out.trim().split('\n')).toHaveLength(runs.length)
  }, 60_000)

  it('pass with the sweep: exit 0, and a table for people', async () => {
    const { code, out } = await program(['grade', 'scenarios/marrow-bend', cleanRun])
    expect(out).toMatch(/^run +outcome/)
    expect(out).toMatch(/clean\.json +pass/)
    expect(code).toBe(0)
  }, 120_000)

  it('are exposed at any instant, for every livening', async () => {
    const { code, out } = await answerOfVerb('expose', 'scenarios/marrow-bend', cleanRun, '--at', '5990s', '--json')
    const { atS, answers } = JSON.parse(out) as { atS: number; answers: { livening: string; siteRiseV: number }[] }
    expect({ code, atS }).toEqual({ code: 0, atS: 5990 })
    expect(answers.map((it) => it.livening)).toContain('clash-b')
    const words = await answerOfVerb('expose', 'scenarios/marrow-bend', cleanRun, '--at', '7000s')
    expect(words.out).toMatch(/Bystander: a pace beside the barrier/)
    expect(words.out).toMatch(/slips onto lv-[bn] through L-5[12]/)
    expect((await answerOfVerb('expose', 'scenarios/marrow-bend', cleanRun, '--at', '99999')).code).toBe(2)
  }, 60_000)

  it('are refused whole when one of them is bad', async () => {
    const bad = write('bad-run.json', '{"format":"earths-on/run","version":1}')
    const { code, out, err } = await answerOfVerb('grade', 'scenarios/marrow-bend', cleanRun, bad)
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err).toContain(`${bad}: $.actions: found nothing`)
  }, 60_000)
})
