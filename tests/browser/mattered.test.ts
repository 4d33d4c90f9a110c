// "How much each thing mattered": what the section of the debrief shows against the shares of the engine in this process.

import { readFileSync } from 'node:fs'
import type { Locator } from 'playwright'
import { afterAll, expect, test } from 'vitest'
import { actions, createSweepCache, declaredCorner, isUnsolvable, judgeRun, sharesOf } from '../../src/engine'
import { requirePack } from '../../src/app/storage/library'
import { replayJob } from '../../src/app/storage/replayJob'
import { readRun } from '../../src/files/run/read'
import { amperes } from '../../src/text'
import { closeBrowser, openApp } from '../support/openApp'
import { bringIn, runUpTo } from '../support/openedRun'

afterAll(closeBrowser)

const name = 'no-cover-holed-boots'

/** The table of the section: thing, and what it took off, as they stand there. */
async function rowsOf(section: Locator): Promise<readonly (readonly [string, string])[]> {
  await section.locator('tbody tr').first().waitFor({ timeout: 120_000 })
  return section
    .locator('tbody tr')
    .evaluateAll((rows) =>
      rows
        .map((row) => [...row.querySelectorAll('td')].map((cell) => cell.innerText))
        .map((cells) => [cells[0], cells[2]]),
    ) as Promise<readonly (readonly [string, string])[]>
}

/** What the run's livening did to whom it reached most, shared out. */
function sharesHere() {
  const read = readRun(readFileSync(`scenarios/marrow-bend/runs/${name}.json`, 'utf8'), actions)
  if (!read.ok) throw new Error('the recorded run cannot be read')
  const { orders, seed } = read.value
  const head = { scenario: 'marrow-bend', seed, purpose: 'practise', startsAt: 'beginning' } as const
  const timeline = replayJob(head, orders)
  const cache = createSweepCache()
  const { visible } = judgeRun(timeline, requirePack('concrete-rod'), { sweep: false, cache })
  const [most] = [...visible!.exposures].sort((one, other) => other.judged / other.limit - one.judged / one.limit)
  const { person, path } = most!
  const { livening, moment } = timeline.struck!
  const whom = { person, path, livening, layers: 'hold' } as const
  const shares = sharesOf(timeline.moments[moment]!, whom, declaredCorner, cache)
  if (isUnsolvable(shares)) throw new Error(`no shares: ${shares.reason}`)
  return shares
}

test('what came alive in a run is shared out as the engine shares it, for the person chosen', {
  timeout: 300_000,
}, async () => {
  const app = await openApp('/', { reducedMotion: 'reduce' })
  const { page } = app
  await page.locator('dialog[open]').waitFor()
  await page.keyboard.press('Enter')
  await bringIn(page, runUpTo('marrow-bend', name))
  await page.keyboard.press('Alt+5')
  const section = page.locator('.mattered')
  await section.waitFor({ timeout: 180_000 })
  const shown = await rowsOf(section)
  const words = await section.innerText()

  const shares = sharesHere()
  // less than a thousandth of the largest is named below the table
  const most = Math.max(...shares.shares.map(({ share }) => Math.abs(share)))
  const counted = shares.shares
    .filter(({ share }) => Math.abs(share) > most / 1000)
    .sort((one, other) => other.share - one.share)
  expect(shares).toMatchObject({ person: 'pw', path: 'hand-thigh' })
  expect(words).toMatch(/What came alive at \d\d:\d\d/)
  expect(words).toContain('Pole worker: hand to thigh')
  expect(words).toContain(`${amperes(shares.withNone)} with none of these on, ${amperes(shares.withAll)} as it was`)
  expect(shown.map(([, took]) => took)).toEqual(
    counted.map(({ share }) => (share < 0 ? `added ${amperes(-share)}` : amperes(share))),
  )
  // The bond bridges to what is alive; that the lead's way to earth helps is not hidden by it.
  const ofKind = (kind: string) => counted.find(({ thing }) => thing.kind === kind)!
  expect(ofKind('lead').share).toBeGreaterThan(0)
  expect(ofKind('bond').share).toBeLessThan(0)
  expect(words).toContain('It ties the conductors together')
  counted.forEach(({ thing }, i) => expect(shown[i]![0]).toContain(thing.item ?? 'Barrier'))

  // For the public the rod and its lead make the pace, and the barrier's distance takes it off.
  await section.getByRole('radio', { name: 'Bystander' }).click()
  await section.getByText('Bystander: a pace beside the barrier').waitFor({ timeout: 120_000 })
  const forPublic = new Map(await rowsOf(section))
  expect(forPublic.get('Barrier')).toMatch(/^\d+\sV$/)
  expect(forPublic.get('Lead E-07')).toMatch(/^added \d+\sV$/)
  await section.getByText('Chance of fibrillation').waitFor({ timeout: 120_000 })
  expect(app.complaints).toEqual([])
  await app.close()
})
