// What is set by hand in the picture is the order that the form gives: the run file has the same bytes. Escape, and a
// graphics card that stops in the middle of a drag, lose nothing.

import { afterAll, expect, test } from 'vitest'
import {
  backToThing,
  carry,
  carryUpright,
  give,
  groundPixel,
  look,
  middleOf,
  openBefore,
  openFormOf,
  runByFigures,
  savedRun,
  write,
  written,
} from '../support/hands'
import { closeBrowser } from '../support/openApp'
import { settled } from '../support/openScene'

afterAll(closeBrowser)

const slow = { timeout: 180_000 }

test("a rod's place is stroked over the ground and its depth dragged: the same run as by figures", slow, async () => {
  const hands = await openBefore('drive-rod', 'Plan', 'with')
  const { page } = hands
  await openFormOf(hands)
  await carry(page, [await groundPixel(page, 1, -4), await groundPixel(page, 2.6, -2.35)])
  const [east, north, unset] = await written(page)
  expect(Math.hypot(Number(east) - 2.6, Number(north) + 2.35)).toBeLessThan(0.08)
  expect(unset).toBe('')

  await look(page, 'Over the site')
  const top = await middleOf(page, 'depth')
  await carry(page, [top, { x: top.x, y: top.y + 12 }], false)
  const first = (await written(page))[2]
  expect(Number(first)).toBeGreaterThan(0.2)
  await page.mouse.move(top.x, top.y + 20, { steps: 3 })
  expect(Number((await written(page))[2])).toBeGreaterThan(Number(first))
  await page.keyboard.press('Escape')
  expect(await written(page)).toEqual([east, north, ''])
  await page.mouse.up()
  expect(await written(page)).toEqual([east, north, ''])

  await carry(page, [await middleOf(page, 'depth'), { x: top.x, y: top.y + 25 }])
  const values = await written(page)
  expect(Number(values[2])).toBeGreaterThan(0.5)
  await give(page)
  const run = await savedRun(page)
  expect(run).toContain(`"depthM":${values[2]!}`)
  expect(run).toBe(await runByFigures(hands, values))
  expect(hands.complaints).toEqual([])
  await hands.close()
})

test(
  'a barrier is stroked, a corner dragged, one added, one taken away: the same run as by figures',
  slow,
  async () => {
    const hands = await openBefore('set-barrier', 'Plan', 'with')
    const { page } = hands
    await openFormOf(hands)
    await carry(page, [await groundPixel(page, -4, -4), await groundPixel(page, 1, 3)])
    expect((await written(page)).slice(0, 8).filter((text) => text !== '')).toHaveLength(8)
    const corner = await middleOf(page, 'corner-2')
    await carry(page, [corner, { x: corner.x + 26, y: corner.y - 20 }])
    const side = await middleOf(page, 'side-3')
    await carry(page, [side, { x: side.x - 40, y: side.y }])
    expect((await written(page)).filter((text) => text !== '')).toHaveLength(10)
    const spare = await middleOf(page, 'corner-1')
    await page.mouse.dblclick(spare.x, spare.y)
    const values = (await written(page)).filter((text) => text !== '')
    expect(values).toHaveLength(8)
    await give(page)
    const run = await savedRun(page)
    const figures = runByFigures(hands, values, async () => {
      await page.getByRole('radio', { name: 'Corner by corner' }).click()
      await page.locator('[data-aim]').focus()
      for (const step of ['ArrowLeft', 'ArrowUp', 'ArrowRight']) {
        await page.keyboard.press(step)
        await page.keyboard.press('Enter')
      }
    })
    expect(run).toBe(await figures)
    expect(hands.complaints).toEqual([])
    await hands.close()
  },
)

test('a cover is stroked along the pole and its edges dragged: the same run as by figures', slow, async () => {
  const hands = await openBefore('fit-cover', 'Pole top', 'with')
  const { page } = hands
  await openFormOf(hands)
  const pole = await page.evaluate(() => window.sceneProbe!.pick('pole'))
  await carry(page, [pole!, { x: pole!.x, y: pole!.y - 90 }])
  const [low, high] = (await written(page)).map(Number)
  expect(high! - low!).toBeGreaterThan(0.3)
  await carryUpright(page, 'to', 1, '8.3')
  await carryUpright(page, 'from', 0, '7.2')
  const values = await written(page)
  expect(values).toEqual(['7.2', '8.3'])
  await give(page)
  const run = await savedRun(page)
  expect(run).toContain('"do":"fit-cover","fromM":7.2,"toM":8.3')
  expect(run).toBe(await runByFigures(hands, values))
  await hands.close()
})

test('an eye screw is turned round at the clamp: the same run as by figures', slow, async () => {
  const hands = await openBefore('clamp', 'Pole top', 'on')
  const { page } = hands
  await openFormOf(hands)
  const at = await middleOf(page, 'turns')
  const middle = { x: at.x, y: at.y + 46 }
  const round = (turns: number) =>
    Array.from({ length: Math.round(turns * 12) + 1 }, (_, i) => ({
      x: middle.x + 46 * Math.sin((i * Math.PI) / 6),
      y: middle.y - 46 * Math.cos((i * Math.PI) / 6),
    }))
  await carry(page, round(6))
  expect(await written(page)).toEqual(['6'])
  // Back by two: a screw is loosened the other way.
  await carry(
    page,
    round(2).map(({ x, y }) => ({ x: 2 * middle.x - x, y })),
  )
  expect(await written(page)).toEqual(['4'])
  await give(page)
  const run = await savedRun(page)
  expect(run).toContain('"turns":4')
  expect(run).toBe(await runByFigures(hands, ['4']))
  await hands.close()
})

test('the way of a lead is chosen by dragging along it: the same run as by its line of the slip', slow, async () => {
  const hands = await openBefore('lay-lead', 'Over the site', 'with')
  const way = await middleOf(hands.page, 'way-over-lv')
  await carry(hands.page, [await middleOf(hands.page, 'way'), way])
  const run = await savedRun(hands.page)
  expect(run).toContain('"route":"over-lv"')
  await backToThing(hands.page, hands.thing)
  await hands.page.locator('[data-act^="lay-lead:"][data-choice="over-lv"]').click()
  expect(await savedRun(hands.page)).toBe(run)
  await hands.close()
})

test(
  'the card stops in the middle of a drag: a banner, the drawings and the form go on, and the scene comes back',
  slow,
  async () => {
    const hands = await openBefore('drive-rod', 'Plan', 'with')
    const { page } = hands
    await openFormOf(hands)
    await carry(page, [await groundPixel(page, 1, -4), await groundPixel(page, 2.6, -2.35)])
    const place = await middleOf(page, 'place')
    await carry(page, [place, { x: place.x + 20, y: place.y }], false)
    const values = await written(page)
    await page.evaluate(() => window.sceneProbe!.lose())
    await page.getByText('This machine has stopped drawing in 3D').waitFor()
    await page.mouse.up()
    expect(await written(page)).toEqual(values)
    await page.locator('.sheetdrawings').waitFor()
    expect(await page.locator('[role=tree]').count()).toBe(1)

    await page.evaluate(() => window.sceneProbe!.restore())
    await page.getByText('This machine has stopped drawing in 3D').waitFor({ state: 'detached' })
    await settled(page)
    const again = await middleOf(page, 'place')
    await carry(page, [again, { x: again.x, y: again.y + 20 }])
    expect(await written(page)).not.toEqual(values)
    await page.locator('.act.open input').nth(2).fill('1.8')
    await give(page)
    expect(await savedRun(page)).toContain('"do":"drive-rod"')
    await hands.close()
  },
)
