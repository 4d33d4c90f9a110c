// The scene put on the page and taken away again, as often as a long course would; and how soon a pick is seen.

import type { CDPSession, Page } from 'playwright'
import { afterAll, expect, test } from 'vitest'
import type {} from '../support/scenePage/page'
import { closeScenes, openScene, settled } from '../support/openScene'

afterAll(closeScenes)

interface GraphicsCount {
  /** Contexts that were not given up. */
  readonly contexts: number
  /** Buffers, textures, programs and the like that were made in those and not deleted. */
  readonly objects: number
}

declare global {
  interface Window {
    countGraphics: () => GraphicsCount
    /** Milliseconds from the pointer's release until the choice was on the screen. */
    choiceSeen: Promise<number>
  }
}

/** From now on counts what is made of and deleted from the graphics card, by whoever does it. */
const watchGraphics = (page: Page): Promise<void> =>
  page.evaluate(() => {
    // Held weakly: what is counted must be free to go.
    const made = new WeakMap<WebGL2RenderingContext, number>()
    const seen: WeakRef<WebGL2RenderingContext>[] = []
    const kinds = ['Buffer', 'Texture', 'Program', 'Shader', 'Framebuffer', 'Renderbuffer', 'VertexArray'] as const
    const type = WebGL2RenderingContext.prototype as unknown as Record<string, (...values: unknown[]) => unknown>
    const counted = (name: string, step: number): void => {
      const plain = type[name]!
      type[name] = function (this: WebGL2RenderingContext, ...values: unknown[]) {
        if (!made.has(this)) seen.push(new WeakRef(this))
        made.set(this, (made.get(this) ?? 0) + (step > 0 || values[0] ? step : 0))
        return plain.apply(this, values)
      }
    }
    for (const kind of kinds) {
      counted(`create${kind}`, 1)
      counted(`delete${kind}`, -1)
    }
    window.countGraphics = () => {
      const alive = seen.map((it) => it.deref()).filter((it) => it !== undefined && !it.isContextLost())
      return { contexts: alive.length, objects: alive.reduce((sum, it) => sum + (made.get(it!) ?? 0), 0) }
    }
  })

const loads = (page: Page, count: number): Promise<void> =>
  page.evaluate(async (rounds) => {
    const until = async (is: () => boolean) => {
      while (!is()) await new Promise((done) => setTimeout(done, 5))
    }
    for (let round = 0; round < rounds; round++) {
      window.page.unmount()
      await until(() => window.sceneProbe === undefined)
      // A context is given up half a second after its picture; a browser keeps sixteen at once, and complains beyond.
      await until(() => window.countGraphics().contexts <= 6)
      window.page.set({})
      await until(() => (window.sceneProbe?.info().frames ?? 0) > 0)
    }
  }, count)

/** Bytes of script objects after the rubbish was taken out. */
async function heapOf(session: CDPSession): Promise<number> {
  await session.send('HeapProfiler.collectGarbage')
  return (await session.send('Runtime.getHeapUsage')).usedSize
}

/** So much may the script's own memory grow over the loads, megabytes: compiled code settles; a scene kept would be 130 kB. */
const mayGrow = 10

test('loaded two hundred times, the scene leaves nothing on the graphics card', { timeout: 500_000 }, async () => {
  const { page, complaints, close } = await openScene('at=untie&view=pole-top', {
    viewport: { width: 160, height: 120 },
  })
  const session = await page.context().newCDPSession(page)
  const measure = async () => {
    await settled(page)
    // The context of the picture before is given up a little after it has gone.
    await page.waitForFunction(() => window.countGraphics().contexts <= 1, undefined, { timeout: 10_000 })
    const { geometries, textures, programs } = await page.evaluate(() => window.sceneProbe!.info())
    return { ...(await page.evaluate(() => window.countGraphics())), geometries, textures, programs }
  }
  await watchGraphics(page)
  await loads(page, 5)
  const [first, heap] = [await measure(), await heapOf(session)]
  expect(first.objects).toBeGreaterThan(20)
  expect(first.geometries).toBeGreaterThan(5)
  await loads(page, 195)
  expect(await measure()).toEqual(first)
  expect((await heapOf(session)) - heap).toBeLessThan(mayGrow * 1e6)
  expect(complaints).toEqual([])
  await close()
})

/**
 * From the finger's lifting until the browser has had the frame that shows the choice and asks for the next one. The
 * picture is small, because here a processor fills the pixels; on a graphics card that part is short at any size.
 */
async function untilSeen(page: Page, id: string): Promise<number> {
  const at = await page.evaluate((thing) => window.sceneProbe!.pick(thing), id)
  expect(at, id).not.toBeNull()
  // Set up before the click is sent: the two reach the page by ways of their own.
  await page.evaluate(() => {
    const frames = () => window.sceneProbe!.info().frames
    const before = frames()
    window.choiceSeen = new Promise<number>((done) => {
      const watch = (event: PointerEvent): void => {
        if (frames() === before) setTimeout(() => watch(event), 0)
        else requestAnimationFrame(() => done(performance.now() - event.timeStamp))
      }
      addEventListener('pointerup', watch, { once: true, capture: true })
    })
  })
  await page.mouse.click(at!.x, at!.y)
  return page.evaluate(() => window.choiceSeen)
}

test('a choice is seen within 100 ms, by the middle one of nine', { timeout: 60_000 }, async () => {
  const { page, close } = await openScene('at=prove/D-04&view=pole-top', { viewport: { width: 400, height: 300 } })
  const times: number[] = []
  for (const id of ['conductor-a', 'pole', 'conductor-b', 'arm', 'conductor-c', 'pole', 'arm', 'conductor-a', 'pole']) {
    times.push(await untilSeen(page, id))
    expect((await page.evaluate(() => window.page.said)).at(-1)).toEqual(['select', id])
    await settled(page)
  }
  expect(times.sort((a, b) => a - b)[4]).toBeLessThanOrEqual(100)
  await close()
})
