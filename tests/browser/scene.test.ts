import type { Page } from 'playwright'
import { afterAll, expect, test } from 'vitest'
import type {} from '../support/scenePage/page'
import { closeScenes, openScene, settled } from '../support/openScene'

afterAll(closeScenes)

const spot = (page: Page, id: string, pointer: 'mouse' | 'touch' = 'mouse') =>
  page.evaluate(([thing, kind]) => window.sceneProbe!.pick(thing!, kind as 'mouse' | 'touch'), [id, pointer])
const said = (page: Page) => page.evaluate(() => window.page.said)

test('budgets hold at every part of the job: 60 calls, 200 000 triangles, no frame when nothing moves', async () => {
  const { page, complaints, close } = await openScene('at=receive-step&view=ground')
  for (const [at, view] of [
    ['receive-step', 'tarp'],
    ['drive-rod', 'over'],
    ['test/conductor-b', 'pole-top'],
    ['untie', 'ground'],
    ['untie', 'plan'],
    ['open-switch!', 'switch'],
  ] as const) {
    await page.evaluate(
      ([when, name]) => {
        window.page.goTo(when)
        window.page.set({ view: name })
      },
      [at, view] as const,
    )
    await settled(page)
    const info = await page.evaluate(() => window.sceneProbe!.info())
    expect(info.calls, `${view} at ${at}`).toBeLessThanOrEqual(60)
    expect(info.calls).toBeGreaterThan(8)
    expect(info.triangles, `${view} at ${at}`).toBeLessThanOrEqual(200_000)
  }
  await page.evaluate(() => {
    window.page.set({ view: 'over' })
    window.page.liven('untie', 'clash-b')
  })
  await settled(page)
  const livened = await page.evaluate(() => window.sceneProbe!.info())
  expect(livened.calls).toBeLessThanOrEqual(60)
  expect(livened.triangles).toBeLessThanOrEqual(200_000)
  const before = livened.frames
  await page.waitForTimeout(2000)
  expect(await page.evaluate(() => window.sceneProbe!.info().frames)).toBe(before)
  expect(complaints).toEqual([])
  await close()
})

test('with motion allowed the currents move, and a frozen instant stands', async () => {
  const { page, close } = await openScene('at=untie&view=over&livening=clash-b&motion', {
    reducedMotion: 'no-preference',
  })
  const frames = () => page.evaluate(() => window.sceneProbe!.info().frames)
  const start = await frames()
  await page.waitForTimeout(1500)
  expect(await frames()).toBeGreaterThan(start + 1)
  await page.evaluate(() => window.page.set({ isFrozen: true }))
  await settled(page)
  const frozen = await frames()
  await page.waitForTimeout(1000)
  expect(await frames()).toBe(frozen)
  await close()
})

test('everything that the chain below the LV needs is picked in the picture, by pointer', async () => {
  const { page, complaints, close } = await openScene('at=prove/D-04&view=pole-top')
  for (const id of [
    'conductor-a',
    'conductor-b',
    'conductor-c',
    'lv-a',
    'lv-b',
    'lv-n',
    'lv-c',
    'arm',
    'pole',
    'pw',
    'E-07',
    'P-03',
  ]) {
    const at = await spot(page, id)
    expect(at, id).not.toBeNull()
    await page.mouse.click(at!.x, at!.y)
    expect((await said(page)).at(-1), id).toEqual(['select', id])
  }
  // A second pick on what is selected is the act.
  const again = await spot(page, 'conductor-b')
  await page.mouse.click(again!.x, again!.y)
  await page.mouse.click(again!.x, again!.y)
  expect((await said(page)).slice(-2)).toEqual([
    ['select', 'conductor-b'],
    ['act', 'conductor-b'],
  ])
  expect(complaints).toEqual([])
  await close()
})

test('a finger picks too, and a long press looks', async () => {
  const { page, close } = await openScene('at=prove/D-04&view=pole-top', { hasTouch: true })
  for (const id of ['conductor-a', 'conductor-b', 'conductor-c', 'arm']) {
    const at = await spot(page, id, 'touch')
    expect(at, id).not.toBeNull()
    await page.touchscreen.tap(at!.x, at!.y)
    expect((await said(page)).at(-1), id).toEqual(['select', id])
  }
  const at = await spot(page, 'conductor-a')
  await page.mouse.move(at!.x, at!.y)
  await page.mouse.down()
  await page.waitForTimeout(800)
  await page.mouse.up()
  expect((await said(page)).at(-1)).toEqual(['look', 'conductor-a'])
  await close()
})

test('each kind of thing is picked where it stands', async () => {
  const { page, close } = await openScene('at=untie&view=ground')
  const views = {
    ground: ['pole', 'stay', 'barrier', 'pic', 'gw', 'fx', 'rod/R-1', 'hazard-milestone'],
    'pole-top': ['cover', 'B-02', 'S-11'],
    plan: ['rod/R-1', 'barrier', 'stay'],
    tarp: ['truck'],
  } as const
  for (const [view, ids] of Object.entries(views)) {
    await page.evaluate((name) => window.page.set({ view: name as 'ground' }), view)
    await settled(page)
    for (const id of ids) {
      const at = await spot(page, id)
      expect(at, `${id} in ${view}`).not.toBeNull()
      await page.evaluate(() => window.page.set({ selection: null }))
      await page.mouse.click(at!.x, at!.y)
      expect((await said(page)).at(-1), id).toEqual(['select', id])
    }
  }
  await page.evaluate(() => {
    window.page.goTo('look/switch-27/A!')
    window.page.set({ view: 'switch', switchId: 'switch-27' })
  })
  await settled(page)
  for (const id of ['switch-27/A', 'switch-27/B', 'switch-27/C', 'switch-27', 'so']) {
    const at = await spot(page, id)
    expect(at, id).not.toBeNull()
    await page.mouse.click(at!.x, at!.y)
    expect((await said(page)).at(-1), id).toEqual(['select', id])
  }
  await close()
})

test('a pick is seen at once, and the plate is joined to what was picked', async () => {
  const { page, close } = await openScene('at=prove/D-04&view=pole-top')
  const at = await spot(page, 'conductor-a')
  const anchor = await page.evaluate(() => window.page.anchorOf('conductor-a'))
  expect(anchor).not.toBeNull()
  const before = await page.screenshot()
  await page.mouse.click(at!.x, at!.y)
  await settled(page)
  expect(before.equals(await page.screenshot())).toBe(false)
  await close()
})

test('points of the ground are given in metres of the site', async () => {
  const { page, close } = await openScene('at=untie&view=plan')
  // The rod stands at 2.6 east, 2.35 south: its own foot is the check.
  const rod = (await spot(page, 'rod/R-1'))!
  await page.evaluate(() => window.page.place())
  await page.locator('.is-placing').waitFor()
  await settled(page)
  await page.mouse.move(rod.x, rod.y)
  await page.mouse.click(rod.x, rod.y)
  const [kind, point, how] = (await said(page)).at(-1) as [string, { x: number; y: number }, string]
  expect([kind, how]).toEqual(['ground', 'press'])
  expect(Math.hypot(point.x - 2.6, point.y + 2.35)).toBeLessThan(0.1)
  await close()
})

test('the same site gives the same picture; a lost context comes back with it', async () => {
  const { page, close } = await openScene('at=untie&view=over&livening=clash-b&frozen')
  const first = await page.screenshot()
  await page.evaluate(() => window.sceneProbe!.lose())
  await page.waitForFunction(() => window.page.said.some(([what, how]) => what === 'lost' && how === 'lost'))
  await page.evaluate(() => window.sceneProbe!.restore())
  await page.waitForFunction(() => window.page.said.some(([what]) => what === 'restored'))
  await settled(page)
  expect(first.equals(await page.screenshot())).toBe(true)
  await close()
})

test('views, acts and liveness changed sixty times leave no geometry behind', async () => {
  const { page, close } = await openScene('at=untie&view=ground')
  const round = () =>
    page.evaluate(async () => {
      const wait = () => new Promise((done) => setTimeout(done, 40))
      for (const [at, view] of [
        ['untie', 'ground'],
        ['test/conductor-b', 'pole-top'],
        ['open-switch!', 'switch'],
        ['untie', 'over'],
      ] as const) {
        window.page.goTo(at)
        window.page.set({ view })
        await wait()
      }
      window.page.liven('untie', 'clash-b')
      await wait()
      window.page.set({ instant: null, view: 'ground' })
      await wait()
    })
  await round()
  await settled(page)
  const before = await page.evaluate(() => window.sceneProbe!.info())
  for (let i = 0; i < 10; i++) await round()
  await settled(page)
  const after = await page.evaluate(() => window.sceneProbe!.info())
  expect(after.geometries).toBeLessThanOrEqual(before.geometries)
  expect(after.textures).toBeLessThanOrEqual(before.textures)
  await close()
}, 120_000)

test('keys turn the picture; nothing else in it takes the focus', async () => {
  const { page, close } = await openScene('at=untie&view=over')
  const focusable = await page.evaluate(
    () =>
      document.querySelectorAll('.scene-stage, .scene-stage [tabindex], .scene-stage button, .scene-stage a').length,
  )
  expect(focusable).toBe(1)
  expect(await page.locator('canvas').getAttribute('aria-hidden')).toBe('true')
  const before = await page.screenshot()
  await page.locator('.scene-stage').focus()
  await page.keyboard.press('ArrowRight')
  await settled(page)
  expect(before.equals(await page.screenshot())).toBe(false)
  await close()
})
