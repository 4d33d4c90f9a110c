// A trainee with a pointer or a finger: people and things are picked in the three-dimensional picture, acts are done by a
// second pick or pressed on the slip. No key is used but for figures.

import type { Page } from 'playwright'
import type {} from '../../src/app/scene/probe'
import type { RecordedOrder } from './keyboardTrainee'

/** Acts that name no thing, and where one points for them. */
const homes: Readonly<Record<string, string>> = { climb: 'pole', 'check-from-ground': 'pole-top', walk: 'ground' }
const noThing = ['call-clear', 'report-earths', 'dress-leads', 'read-weather', 'declare-safe']

const views = ['Pole top', 'From below', 'Tarp', 'Over the site', 'Plan']

export class PointerTrainee {
  secondPicks = 0
  private chosen = ''
  /** A pick on what is chosen already would be the act. */
  private thing = ''

  constructor(
    private readonly page: Page,
    private readonly pointer: 'mouse' | 'touch',
  ) {}

  async follow(orders: readonly RecordedOrder[]): Promise<void> {
    for (const order of orders) {
      await this.waitUntil(order.at)
      if (this.chosen !== order.who) await this.pickThing(order.who)
      this.chosen = order.who
      await this.give(order)
    }
  }

  private async give(order: RecordedOrder): Promise<void> {
    const given = await this.given()
    const thing = order.on ?? homes[order.do] ?? order.with
    if (noThing.includes(order.do)) await this.pickNothing()
    else if (thing !== this.thing) await this.pickThing(thing!)
    this.thing = noThing.includes(order.do) ? '' : thing!
    const values = Object.entries(order).filter(([name]) => !['at', 'do', 'who', 'on', 'with'].includes(name))
    const act = this.page.locator(`[data-act="${order.do}:${order.with ?? ''}"]`)
    if (values.length === 0 && this.thing !== '' && (await this.isPlate(order))) {
      this.secondPicks++
      await this.pickThing(thing!)
    } else if (values.length === 1 && typeof values[0]![1] === 'string')
      await this.pressOn(act.and(this.page.locator(`[data-choice="${String(values[0]![1])}"]`)))
    else {
      await this.pressOn(act)
      const point = values.find(([name]) => name.endsWith('Point'))?.[1]
      if (point) await this.pointAt(point as { xM: number; yM: number })
      else if (values.length > 0) await this.fill(order, values)
    }
    await this.untilGiven(given, order)
    await this.expectLast(order)
  }

  private async fill(order: RecordedOrder, values: readonly (readonly [string, unknown])[]): Promise<void> {
    const form = this.page.locator(`[data-form="${order.do}:${order.with ?? ''}"]`)
    for (const [name, value] of values) {
      const field = form.locator(`[data-field="${name.replace(/(M|Mm2)$/, '')}"] input`).first()
      await field.fill(String(value))
    }
    await this.pressOn(form.locator('.btn.go'))
  }

  /** A point of the ground, from straight above: there five centimetres are more than a pixel. */
  private async pointAt({ xM, yM }: { xM: number; yM: number }): Promise<void> {
    await this.look('Plan')
    const at = await this.page.evaluate(([x, y]) => window.sceneProbe!.ground(x!, y!), [xM, yM])
    if (!at) throw new Error(`${xM}, ${yM} is not in the picture`)
    await this.press(at)
  }

  /** The plate shows the very act that is meant: a second pick does it. */
  private isPlate(order: RecordedOrder): Promise<boolean> {
    return this.page.evaluate(
      (key) => {
        const plate = document.querySelector('[data-plate] .nm')?.textContent ?? ''
        const line = document.querySelector(`[data-act="${key}"]:not([aria-disabled]) .nm`)?.textContent ?? '-'
        return plate.endsWith(line)
      },
      `${order.do}:${order.with ?? ''}`,
    )
  }

  private async pickThing(id: string): Promise<void> {
    for (let k = 0; k < 2; k++) {
      // What lies under the slip is reached once it is put away.
      const away = this.page.locator('.slipclose')
      if (k === 1 && (await away.count()) > 0) await this.pressOn(away)
      for (const view of [null, ...views]) {
        if (view) await this.look(view)
        else await this.settle()
        const at = await this.page.evaluate(
          ([thing, kind]) => window.sceneProbe?.pick(thing!, kind as 'mouse') ?? null,
          [id, this.pointer],
        )
        if (!at) continue
        return this.press(at)
      }
    }
    throw new Error(`${id} cannot be picked from anywhere`)
  }

  /** What was ordered or waited for has reached the picture. */
  private async settle(): Promise<void> {
    await this.page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 30)))),
    )
  }

  private async pickNothing(): Promise<void> {
    await this.settle()
    let at = await this.page.evaluate(() => window.sceneProbe!.nothing())
    if (!at) {
      await this.look('From below')
      at = await this.page.evaluate(() => window.sceneProbe!.nothing())
    }
    if (!at) throw new Error('there is no free place in the picture')
    await this.press(at)
  }

  private async look(view: string): Promise<void> {
    await this.pressOn(this.page.getByRole('button', { name: view, exact: true }))
    await this.page.evaluate(async () => {
      const frames = () => window.sceneProbe!.info().frames
      const wait = () => new Promise((done) => setTimeout(done, 60))
      const before = frames()
      for (let k = 0; k < 20 && frames() === before; k++) await wait()
      for (let last = -1; last !== frames(); ) {
        last = frames()
        await wait()
      }
    })
  }

  private async press({ x, y }: { x: number; y: number }): Promise<void> {
    if (this.pointer === 'touch') await this.page.touchscreen.tap(x, y)
    else await this.page.mouse.click(x, y)
  }

  private async pressOn(what: ReturnType<Page['locator']>): Promise<void> {
    if (this.pointer === 'touch') await what.first().tap()
    else await what.first().click()
  }

  private async untilGiven(before: number, order: RecordedOrder): Promise<void> {
    for (let k = 0; k < 100; k++) {
      if ((await this.given()) > before) return
      await this.page.waitForTimeout(50)
    }
    const slip = await this.page.locator('.slip').innerText()
    throw new Error(`not given: ${JSON.stringify(order)}; the slip says: ${slip}`)
  }

  /** Orders kept so far: the app keeps the open job after each. */
  private given(): Promise<number> {
    return this.page.evaluate(
      () =>
        (JSON.parse(localStorage.getItem('earths-on/open-job') ?? '{"orders":[]}') as { orders: unknown[] }).orders
          .length,
    )
  }

  private async expectLast(order: RecordedOrder): Promise<void> {
    const { at, who, do: act, on } = order
    const newest = await this.page.evaluate(() =>
      (JSON.parse(localStorage.getItem('earths-on/open-job')!) as { orders: RecordedOrder[] }).orders.slice(-2),
    )
    const [last, before] = [...newest].reverse() as [RecordedOrder, RecordedOrder?]
    const given = [last.at, last.who, last.do, last.on].join(' ')
    if (given !== [at, who, act, on].join(' '))
      throw new Error(`meant ${JSON.stringify(order)}, gave ${JSON.stringify(last)} after ${JSON.stringify(before)}`)
  }

  private async waitUntil(second: number): Promise<void> {
    for (let k = 0; k < 60; k++) {
      const now = Number(await this.page.locator('[data-now]').getAttribute('data-now'))
      if (now >= second) return
      await this.pressOn(this.page.getByRole('button', { name: /^Go on/ }))
    }
    throw new Error(`the clock does not reach ${second}`)
  }
}
