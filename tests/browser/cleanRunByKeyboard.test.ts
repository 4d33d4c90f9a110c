// The whole recorded clean run through the sheets with the keyboard alone: the same run file comes out, byte for byte.

import { readFileSync } from 'node:fs'
import { afterAll, expect, test } from 'vitest'
import { KeyboardTrainee, type RecordedOrder } from '../support/keyboardTrainee'
import { closeBrowser, openApp } from '../support/openApp'

afterAll(closeBrowser)

const recording = readFileSync('scenarios/marrow-bend/runs/clean.json', 'utf8')

/** Inputs that a clean whole run may take. */
const budget = 260

test('the clean run by keyboard gives the recorded run, byte for byte, within the budget of inputs', {
  timeout: 600_000,
}, async () => {
  const { actions, seed, purpose } = JSON.parse(recording) as {
    actions: RecordedOrder[]
    seed: number
    purpose: string
  }
  const app = await openApp(`/#scenario=marrow-bend&seed=${seed}&purpose=${purpose}&place=site`)
  await app.page.locator('dialog[open]').waitFor()
  await app.page.keyboard.press('Enter')
  const trainee = new KeyboardTrainee(app.page)
  await trainee.follow(actions)

  await app.page.keyboard.press('Alt+1')
  const download = app.page.waitForEvent('download')
  await app.page.getByRole('button', { name: 'Save the run' }).press('Enter')
  const exported = readFileSync(await (await download).path(), 'utf8')
  // What grading must find stands in the recording only.
  const recorded = JSON.parse(recording) as Record<string, unknown>
  expect({ ...(JSON.parse(exported) as object), expect: recorded.expect }).toEqual(recorded)
  // The lines of the orders are the same bytes.
  const orderLines = (text: string) => text.split('\n').filter((line) => /^\s*\{.*"do":/.test(line))
  expect(orderLines(exported)).toHaveLength(actions.length)
  expect(orderLines(exported)).toEqual(orderLines(recording))

  const byPurpose = [...trainee.counts].sort((a, b) => b[1] - a[1]).map(([name, count]) => `${name} ${count}`)
  expect(
    trainee.inputs,
    `inputs by what: ${byPurpose.join(', ')}; go on ${trainee.goOns}, focus ${trainee.moves}`,
  ).toBeLessThanOrEqual(budget)
  expect(app.foreignRequests).toEqual([])
  expect(app.complaints).toEqual([])
  await app.close()
})
