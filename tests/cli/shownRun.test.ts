// A run whose beginning was shown is nobody's pass: the table says so, and the exit code too.

import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { answerOfVerb } from '../support/answerOfVerb'

const folder = mkdtempSync(join(tmpdir(), 'shown-'))
afterAll(() => rmSync(folder, { recursive: true }))

test('it is graded, and has no outcome', { timeout: 60_000 }, async () => {
  const run = JSON.parse(readFileSync('scenarios/kestrel-flat/runs/clean.json', 'utf8')) as Record<string, unknown>
  const place = join(folder, 'shown.json')
  writeFileSync(place, JSON.stringify({ ...run, shown: 12 }))
  const answer = await answerOfVerb('grade', 'scenarios/kestrel-flat', place, '--no-sweep')
  expect(answer.code).toBe(1)
  expect(answer.out).toMatch(/shown\.json\s+shown\s+0\s+0/)
})
