// The same answers in Chromium, and in Firefox where the machine has it, as in node: to the last bit.

import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'vite'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { answerElsewhere, findFirefox, inChromium, type OpenIn } from '../support/answerElsewhere'
import { answerOf } from '../support/bitsPage/answerOf'

const read = (path: string): string => readFileSync(path, 'utf8')
const cases = 'tests/qualification'
const files = readdirSync(cases, { recursive: true, encoding: 'utf8' }).filter((it) => it.endsWith('.json'))
const texts = {
  scenario: read('scenarios/marrow-bend/scenario.json'),
  pack: read('scenarios/packs/concrete-rod/pack.json'),
  run: read('scenarios/marrow-bend/runs/clean-livened.json'),
  cases: files.sort().map((it) => read(join(cases, it))),
}

const folder = mkdtempSync(join(tmpdir(), 'earths-on-bits-'))
let expected = ''

beforeAll(async () => {
  await build({
    root: 'tests/support/bitsPage',
    configFile: false,
    base: './',
    logLevel: 'error',
    build: { outDir: folder, emptyOutDir: true, chunkSizeWarningLimit: 2000, reportCompressedSize: false },
  })
  expected = answerOf(texts)
}, 300_000)

afterAll(() => rmSync(folder, { recursive: true }))

const firefox = findFirefox()
const elsewhere: readonly (readonly [string, OpenIn])[] = [
  ['Chromium', inChromium],
  ...(firefox ? [['Firefox', firefox] as const] : []),
]

test.each(elsewhere)(
  '%s answers a run with its sweep and all qualification cases with the bytes of node',
  async (_, openIn) => {
    expect(await answerElsewhere(openIn, folder, texts)).toBe(expected)
    expect(expected.length).toBeGreaterThan(20_000)
  },
  300_000,
)
