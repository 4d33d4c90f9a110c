// The whole recorded clean run through the sheets with the keyboard alone: the same run file comes out, byte for byte, on a
// machine that draws in three dimensions and on one that cannot. The same run has the same grade.

import { readFileSync } from 'node:fs'
import { afterAll, expect, test } from 'vitest'
import { KeyboardTrainee, type RecordedOrder } from '../support/keyboardTrainee'
import { closeBrowser, openApp } from '../support/openApp'

afterAll(closeBrowser)

const recording = readFileSync('scenarios/marrow-bend/runs/clean.json', 'utf8')

/** Inputs that a clean whole run may take. */
const budget = 260

test.each([
  ['with the scene', true],
  ['on a machine that cannot draw it', false],
] as const)(
  'the clean run by keyboard, %s, is the recorded run, byte for byte, within the budget of inputs',
  {
    timeout: 600_000,
  },
  async (_where, canDraw) => {
    const { actions, seed, purpose } = JSON.parse(recording) as {
      actions: RecordedOrder[]
      seed: number
      purpose: string
    }
    const app = await openApp(`/#scenario=marrow-bend&seed=${seed}&purpose=${purpose}&place=site`)
    if (!canDraw) {
      await app.page.addInitScript(() => {
        HTMLCanvasElement.prototype.getContext = () => null
      })
      await app.page.reload()
    }
    await app.page.locator('dialog[open]').waitFor()
    await app.page.keyboard.press('Enter')
    await (canDraw ? app.page.locator('canvas') : app.page.getByText('This machine cannot draw in 3D')).waitFor()
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
  },
)
