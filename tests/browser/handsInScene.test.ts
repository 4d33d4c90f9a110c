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

test('by touch: a finger carries a grip as a pointer does', slow, async () => {
  const hands = await openBefore('clamp', 'Pole top', 'on', { hasTouch: true, viewport: { width: 820, height: 1180 } })
  const { page } = hands
  await openFormOf(hands)
  const at = await middleOf(page, 'turns')
  const middle = { x: at.x, y: at.y + 46 }
  const finger = await page.context().newCDPSession(page)
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', turn: number) =>
    finger.send('Input.dispatchTouchEvent', {
      type,
      touchPoints:
        type === 'touchEnd'
          ? []
          : [
              {
                x: middle.x + 46 * Math.sin(turn * 2 * Math.PI),
                y: middle.y - 46 * Math.cos(turn * 2 * Math.PI),
              },
            ],
    })
  await touch('touchStart', 0)
  for (let k = 1; k <= 36; k++) await touch('touchMove', k / 12)
  await touch('touchEnd', 3)
  expect(await written(page)).toEqual(['3'])
  await hands.close()
})

test(
  'the tape: held by picks, by the list and by figures, it reads the same; each picture shows it',
  slow,
  async () => {
    const hands = await openBefore('declare-safe', 'From below', 'on')
    const { page } = hands
    const read = async () => (await page.locator('[data-tape]').innerText()).replaceAll('\u00a0', ' ')
    const choose = (thing: string) => page.locator(`[data-thing="${thing}"]`).first().click()
    // Rod 2.6 m east and 2.35 m south, conductor A 0.75 m south and 8.5 m up: 1.6 m across, and the root of the squares.
    await choose('rod/R-1')
    await page.keyboard.press('m')
    await choose('conductor-a')
    await page.keyboard.press('m')
    const byList = await read()
    expect(byList).toContain('1.6 m over the ground, 8.5 m up, 8.65 m straight')
    await settled(page)
    await page.locator('.scene-tape', { hasText: '8.5 m high' }).waitFor()

    await page.keyboard.press('x')
    expect(await page.locator('[data-tape]').count()).toBe(0)
    await page.getByRole('button', { name: 'Tape', exact: true }).click()
    for (const thing of ['rod/R-1', 'conductor-a']) {
      await settled(page)
      const at = await page.evaluate((id) => window.sceneProbe!.pick(id), thing)
      await page.mouse.click(at!.x, at!.y)
    }
    expect(await read()).toBe(byList)

    await page.getByText('To a point of the ground, by figures').click()
    const figures = page.locator('.tapeslip input')
    for (const [x, y] of [
      ['0', '0'],
      ['3', '-4'],
    ]) {
      await figures.nth(0).fill(x!)
      await figures.nth(1).fill(y!)
      await page.getByRole('button', { name: 'Hold it here' }).click()
    }
    expect(await read()).toContain('5 m over the ground, 0 m up, 5 m straight')
    await page.keyboard.press('Escape')
    await page.getByRole('button', { name: 'Drawings', exact: true }).click()
    expect(await page.locator('.sheetdrawings svg').last().textContent()).toContain('5\u00a0m')
    await hands.close()
  },
)

test(
  'eyes, overhead and closer are other pictures, which come to rest; what is pointed at is named',
  slow,
  async () => {
    const hands = await openBefore('declare-safe', 'From below', 'on')
    const { page } = hands
    await page.locator('[data-thing="rod/R-1"]').first().click()
    const pictures: Buffer[] = []
    for (const key of ['v', 'o', 'z', '3', 'v']) {
      await page.keyboard.press(key)
      await settled(page)
      if (key !== '3') pictures.push(await page.locator('canvas').screenshot())
    }
    for (const [i, one] of pictures.entries())
      for (const other of pictures.slice(i + 1)) expect(one.equals(other)).toBe(false)
    const frames = () => page.evaluate(() => window.sceneProbe!.info().frames)
    const before = await frames()
    await page.waitForTimeout(1000)
    expect(await frames()).toBe(before)

    await look(page, 'From below')
    const at = await page.evaluate(() => window.sceneProbe!.pick('stay'))
    await page.mouse.move(at!.x, at!.y)
    await page.locator('.scene-name', { hasText: 'Stay' }).waitFor()
    expect(hands.complaints).toEqual([])
    await hands.close()
  },
)

test('the eyes of whoever is at a switch are on that switch', slow, async () => {
  const hands = await openBefore('lock', 'From below', 'on')
  const { page } = hands
  await page.getByRole('button', { name: 'Eyes of SO', exact: true }).click()
  await settled(page)
  const ids = () => page.evaluate(() => window.sceneProbe!.ids())
  expect(await ids()).toContain(`${hands.thing}/A`)
  expect(await ids()).not.toContain('stay')
  // Whoever stands on the ground sees the site again.
  await page.keyboard.press('1')
  await page.getByRole('button', { name: 'Eyes of PIC', exact: true }).click()
  await settled(page)
  expect(await ids()).toContain('stay')
  expect(hands.complaints).toEqual([])
  await hands.close()
})
