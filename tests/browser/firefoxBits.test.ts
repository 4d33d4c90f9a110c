// The same answers in Firefox, another engine for the same language, to the last bit. Where the machine has Firefox.

import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'vite'
import { expect, test } from 'vitest'
import { answerOf } from '../support/bitsPage/answerOf'
import { answerOfFirefox, findFirefox } from '../support/firefox'

const firefox = findFirefox()
const read = (path: string): string => readFileSync(path, 'utf8')

test.skipIf(firefox === undefined)(
  'a run with its sweep and all qualification cases: Firefox and node answer the same bytes',
  { timeout: 300_000 },
  async () => {
    const folder = mkdtempSync(join(tmpdir(), 'earths-on-bits-'))
    await build({
      root: 'tests/support/bitsPage',
      configFile: false,
      base: './',
      logLevel: 'error',
      build: { outDir: folder, emptyOutDir: true, chunkSizeWarningLimit: 2000, reportCompressedSize: false },
    })
    const cases = 'tests/qualification'
    const files = readdirSync(cases, { recursive: true, encoding: 'utf8' }).filter((it) => it.endsWith('.json'))
    const texts = {
      scenario: read('scenarios/marrow-bend/scenario.json'),
      pack: read('scenarios/packs/concrete-rod/pack.json'),
      run: read('scenarios/marrow-bend/runs/clean-livened.json'),
      cases: files.sort().map((it) => read(join(cases, it))),
    }
    const expected = answerOf(texts)
    const got = await answerOfFirefox(firefox!, folder, texts)
    rmSync(folder, { recursive: true })
    expect(got).toBe(expected)
    expect(got.length).toBeGreaterThan(20_000)
  },
)
