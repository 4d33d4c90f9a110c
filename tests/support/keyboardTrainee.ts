// A trainee with a keyboard and no pointer: gives the orders of a recorded run through the sheets, and counts the keys.
// An input selects, sets, orders or judges. Counted apart: moving the focus (Tab, arrows, Page, Escape; in a list or strip the
// choice follows the focus), turning to another sheet, aiming (the cross-hair over the plan, the pointer along a ruler), and
// *go on*. What was aimed at is set by an input.

import type { Page } from 'playwright'

export interface RecordedOrder {
  readonly at: number
  readonly do: string
  readonly who: string
  readonly on?: string
  readonly with?: string
  readonly [value: string]: unknown
}

const crew = ['pic', 'pw', 'gw', 'so']

/** Acts that name no thing, and where the list keeps them. */
const homes: Readonly<Record<string, string>> = {
  climb: 'pole',
  'inspect-pole': 'pole',
  'match-pole': 'pole',
  'strap-on': 'pole',
  unstrap: 'pole',
  'locate-services': 'ground',
  walk: 'ground',
  'park-truck': 'truck',
  'take-in-barrier': 'barrier',
  'remove-cover': 'cover',
  'check-from-ground': 'pole-top',
}

const groups: Readonly<Record<string, readonly string[]>> = {
  'all/conductors': ['conductor-a', 'conductor-b', 'conductor-c'],
  'all/lv': ['lv-a', 'lv-b', 'lv-n', 'lv-c'],
  'all/feeders': ['f1', 'f2', 'fx'],
  'all/switch-27': ['switch-27/A', 'switch-27/B', 'switch-27/C'],
  'all/switch-31': ['switch-31/A', 'switch-31/B', 'switch-31/C'],
}

export class KeyboardTrainee {
  readonly counts = new Map<string, number>()
  inputs = 0
  moves = 0
  goOns = 0
  private place = ''
  private persons: readonly string[] = ['pic']
  private keeper = ''
  private handled: readonly string[] = []
  private lasts: RecordedOrder[] = []
  private purpose = ''
  private hasSite = false
  /** Turned over already, when the one before it was judged. */
  private inHand = ''

  constructor(private readonly page: Page) {}

  async follow(orders: readonly RecordedOrder[]): Promise<void> {
    let i = 0
    while (i < orders.length) i += await this.step(orders, i)
  }

  /** @returns how many orders of the run that took */
  private async step(orders: readonly RecordedOrder[], i: number): Promise<number> {
    const order = orders[i]!
    this.purpose = order.do
    await this.waitUntil(order.at)
    if (order.do === 'mark-hazard') return this.markHazard(order)
    if (order.do === 'write-plan') return this.writePlan(order)
    if (order.do === 'book-out') return this.turnOver(orders, i)
    const next = orders[i + 1]
    if (order.do === 'tie-on' && next?.do === 'haul' && next.on === order.on) {
      await this.choosePersons([order.who, next.who])
      await this.goTo(4)
      await this.focusThing(order.on!)
      await this.giveAct({ ...order, do: 'send-up' })
      return 2
    }
    if (order.do === 'lower') {
      const count = await this.lowerAll(orders, i)
      if (count > 0) return count
    }
    const shared = shareOf(orders, i)
    if (shared > 1) return this.giveToMany(orders.slice(i, i + shared))
    if (order.do === 'book-in') return this.signIn(orders, i)
    const ofKind = this.kindAt(orders, i)
    if (ofKind > 1) return this.takeKind(orders.slice(i, i + ofKind))
    const group = groupAt(orders, i)
    // Who sends up and who hauls are both marked: each act is given to the one who can do it.
    if (order.do === 'tie-on' && this.persons.length === 1) await this.choosePersons([order.who, orders[i + 1]!.who])
    if (!(await this.isOnlyOneOf(order, group))) await this.choosePersons([order.who])
    if (group) {
      await this.goTo(4)
      await this.focusThing(group)
      await this.giveAct(order)
      return groups[group]!.length
    }
    await this.giveOne(order)
    return 1
  }

  /** Several of one kind are taken one after the other: their ids differ in the number only. */
  private kindAt(orders: readonly RecordedOrder[], i: number): number {
    const kind = /^[A-Z]+-\d/.exec(orders[i]!.on ?? '')?.[0]
    let count = 0
    while (
      orders[i + count]?.do === 'take' &&
      orders[i + count]!.who === orders[i]!.who &&
      kind &&
      orders[i + count]!.on!.startsWith(kind)
    )
      count++
    return count
  }

  private async takeKind(orders: readonly RecordedOrder[]): Promise<number> {
    const first = orders[0]!
    await this.choosePersons([first.who])
    await this.goTo(4)
    const heading = await this.page.evaluate((item) => {
      const rows = [...document.querySelectorAll<HTMLElement>('[role=treeitem]')]
      const at = rows.findIndex((it) => it.dataset.key === `tarp/${item}`)
      return rows.slice(0, at).findLast((it) => it.ariaLevel === '2')?.dataset.thing
    }, first.on!)
    await this.focusThing(heading!)
    await this.giveAct({ ...first, on: heading! })
    return orders.length
  }

  /** Several are marked, and of these only the one who is meant can do it. */
  private async isOnlyOneOf(order: RecordedOrder, group: string | undefined): Promise<boolean> {
    if (this.persons.length < 2 || !this.persons.includes(order.who)) return false
    await this.goTo(4)
    await this.focusThing(group ?? thingOf(order))
    return this.page.evaluate(
      ({ key, who }) => document.querySelector<HTMLElement>(`[data-act="${key}"]`)?.dataset.people === who,
      { key: `${order.do}:${order.with ?? ''}`, who: order.who },
    )
  }

  /** A run of items on the list of what is signed out: all are ticked, then those that stay out are not. */
  private async signIn(orders: readonly RecordedOrder[], i: number): Promise<number> {
    const first = orders[i]!
    let count = 1
    while (orders[i + count]?.do === 'book-in' && orders[i + count]!.who === first.who) count++
    await this.choosePersons([first.who])
    await this.goTo(4)
    await this.focusThing('all/out')
    await this.giveAct({ ...first, on: undefined as never, things: orders.slice(i, i + count).map((it) => it.on) })
    return count
  }

  /** What hangs up there is lowered from the list when it comes in the order of the list. */
  private async lowerAll(orders: readonly RecordedOrder[], i: number): Promise<number> {
    let count = 0
    while (orders[i + count]?.do === 'lower') count++
    if (count < 4 || orders.length === i) return 0
    await this.choosePersons([orders[i]!.who])
    await this.goTo(4)
    await this.focusThing('all/aloft')
    const wanted = orders.slice(i, i + count).map((it) => it.on!)
    const hanging = await this.page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('[data-key^="aloft/"]')].map((it) => it.dataset.thing!),
    )
    const inOrder = hanging.filter((it) => wanted.includes(it))
    // One that hangs elsewhere in the list is lowered first, by itself.
    if (
      inOrder.join() !== wanted.join() &&
      hanging.filter((it) => wanted.slice(1).includes(it)).join() === wanted.slice(1).join()
    ) {
      await this.giveOne(orders[i]!)
      return 1
    }
    if (inOrder.join() !== wanted.join()) return 0
    await this.giveAct({ ...orders[i]!, on: 'all/aloft', things: wanted })
    return count
  }

  private async giveOne(order: RecordedOrder): Promise<void> {
    await this.goTo(4)
    await this.focusThing(thingOf(order))
    if (this.isAgain(order)) await this.input('a')
    else await this.giveAct(order)
    this.lasts.unshift(order)
  }

  /** The same act with the same figures on another thing. */
  private isAgain(order: RecordedOrder): boolean {
    if (order.on === undefined || valuesOf(order).length === 0) return false
    const last = this.lasts.slice(0, 8).find((it) => it.do === order.do && it.with === order.with)
    return last !== undefined && JSON.stringify(valuesOf(last)) === JSON.stringify(valuesOf(order))
  }

  private async giveAct(order: RecordedOrder): Promise<void> {
    await this.move('s')
    const values = valuesOf(order)
    const isOfChoices =
      values.length > 0 && values.length <= 2 && values.every(([, value]) => typeof value === 'string')
    // On the slip the choices stand in the order in which the act asks for them.
    const single = isOfChoices
      ? values
          .flatMap(([, value]) => String(value).split(' '))
          .sort()
          .join(' ')
      : undefined
    const key = `${order.do}:${order.with ?? ''}`
    for (let k = 0; k < 90; k++) {
      const here = await this.page.evaluate(() => {
        const it = document.activeElement as HTMLElement | null
        const form = it?.closest<HTMLElement>('[data-form]')
        return {
          act: it?.dataset.act,
          choice: it?.dataset.choice?.split(' ').sort().join(' '),
          form: form?.dataset.form,
        }
      })
      if (here.form === key) return this.fillForm(order)
      if (here.act === key && (single === undefined ? values.length === 0 : here.choice === single))
        return this.input('Enter')
      // A form opens in the place of its name as soon as the focus is there.
      if (here.act === key && single === undefined) {
        await this.page.waitForTimeout(20)
        continue
      }
      await this.move(here.form !== undefined && here.form !== key ? 'Tab' : 'ArrowDown')
    }
    throw new Error(`no act ${key} on ${thingOf(order)}`)
  }

  private async fillForm(order: RecordedOrder): Promise<void> {
    for (let k = 0; k < 12; k++) {
      const field = await this.page.evaluate(() => {
        const it = document.activeElement as HTMLElement | null
        const all = [...(it?.closest('form')?.querySelectorAll('[data-field]') ?? [])]
        const place = it?.closest<HTMLElement>('[data-field]')
        return place ? { name: place.dataset.field!, isLast: all.at(-1) === place } : null
      })
      if (!field) return
      await this.fillField(field.name, order)
      if (field.isLast) return
    }
  }

  private async fillField(name: string, order: RecordedOrder): Promise<void> {
    // `at` alone is the second of the order; a value of that name is a point.
    const value = order[`${name}Point`] ?? order[`${name}M`] ?? order[`${name}Mm2`] ?? order[name]
    if (typeof value === 'number') return this.setFigure(value)
    if (Array.isArray(value) && typeof value[0] === 'string') return this.chooseMany(value as string[])
    if (Array.isArray(value)) {
      const corners = value as { xM: number; yM: number }[]
      await this.aim(corners[0]!)
      return this.aim(corners[2]!, corners[0]!)
    }
    if (typeof value === 'object' && value !== null) return this.aim(value as { xM: number; yM: number })
    await this.focusChoice(String(value))
    await this.input('Enter')
  }

  /** The pointer of the ruler is aimed with Shift and an arrow, and set with Enter. */
  private async setFigure(value: number): Promise<void> {
    for (let k = 0; k < 400; k++) {
      const now = await this.page.evaluate(() => (document.activeElement as HTMLInputElement).value)
      if (now !== '' && Math.abs(Number(now) - value) < 1e-9) return this.input('Enter')
      await this.move('Shift+ArrowUp')
    }
    throw new Error(`the ruler does not reach ${value}`)
  }

  private async chooseMany(wanted: readonly string[]): Promise<void> {
    const all = await this.page.evaluate(() =>
      [...(document.activeElement?.closest('[role=group]')?.querySelectorAll<HTMLElement>('.pick') ?? [])].map(
        (it) => it.dataset.choice!,
      ),
    )
    const unwanted = all.filter((it) => !wanted.includes(it))
    if (unwanted.length + 1 < wanted.length) {
      await this.input('Control+a')
      for (const each of unwanted) await this.focusChoice(each).then(() => this.input(' '))
    } else
      for (const each of all.filter((it) => wanted.includes(it)))
        await this.focusChoice(each).then(() => this.input(' '))
    await this.input('Enter')
  }

  private async focusChoice(choice: string): Promise<void> {
    const offset = await this.page.evaluate((wanted) => {
      const it = document.activeElement as HTMLElement | null
      const all = [...(it?.closest('[role=group],[role=radiogroup]')?.querySelectorAll<HTMLElement>('.pick') ?? [])]
      return all.findIndex((each) => each.dataset.choice === wanted) - all.indexOf(it!)
    }, choice)
    for (let k = 0; k < Math.abs(offset); k++) await this.move(offset > 0 ? 'ArrowDown' : 'ArrowUp')
  }

  /** The cross-hair starts at the pole, or where the last corner was set. */
  private async aim(to: { xM: number; yM: number }, from = { xM: 0, yM: 0 }): Promise<void> {
    const walk = async (by: number, more: string, less: string) => {
      const fine = Math.round(by / 0.05)
      const coarse = Math.trunc(fine / 10)
      for (let k = 0; k < Math.abs(coarse); k++) await this.move(coarse > 0 ? more : less)
      const rest = fine - coarse * 10
      for (let k = 0; k < Math.abs(rest); k++) await this.move(`Shift+${rest > 0 ? more : less}`)
    }
    await walk(to.xM - from.xM, 'ArrowRight', 'ArrowLeft')
    await walk(to.yM - from.yM, 'ArrowUp', 'ArrowDown')
    await this.input('Enter')
  }

  private async giveToMany(orders: readonly RecordedOrder[]): Promise<number> {
    const people = orders.map((it) => it.who)
    await this.choosePersons(people)
    await this.goTo(4)
    await this.focusThing(orders[0]!.on === undefined ? thingOf(orders[0]!) : 'all/boots')
    await this.giveAct(orders[0]!)
    return orders.length
  }

  private async markHazard(order: RecordedOrder): Promise<number> {
    await this.choosePersons([order.who])
    await this.goTo(2)
    await this.tabTo(`[data-hazard="${order.on}"]`)
    await this.input('Enter')
    return 1
  }

  private async writePlan(order: RecordedOrder): Promise<number> {
    await this.goTo(2)
    await this.tabTo('[role=tab][data-part=plan]')
    await this.move('Enter')
    let last: readonly string[] = []
    for (const card of headed(order.cards as string[])) {
      const parts = card.split(':')
      if (parts[0] !== last[0]) {
        await this.tabTo('.picklist:nth-child(1) .pick')
        await this.pick(parts[0]!)
      }
      // The item stays when the next act can use it too.
      if (parts[1] !== last[1] || (parts[0] !== last[0] && !(await this.hasPicked(parts[1]!)))) {
        await this.tabTo('.picklist:nth-child(2) .pick')
        await this.pick(parts[1]!)
      }
      await this.tabTo('.picklist:nth-child(3) .pick')
      await this.pick(parts[2]!)
      last = parts
    }
    await this.tabTo('[data-plan-write]')
    await this.input('Enter')
    return 1
  }

  private hasPicked(item: string): Promise<boolean> {
    return this.page.evaluate(
      (wanted) =>
        document.querySelector(`.picklist:nth-child(2) [data-pick="${wanted}"]`)?.getAttribute('aria-pressed') ===
        'true',
      item,
    )
  }

  private async pick(id: string): Promise<void> {
    const offset = await this.page.evaluate((wanted) => {
      const it = document.activeElement as HTMLElement
      const all = [...it.closest('.picklist')!.querySelectorAll<HTMLElement>('.pick')]
      return all.findIndex((each) => each.dataset.pick === wanted) - all.indexOf(it)
    }, id)
    for (let k = 0; k < Math.abs(offset); k++) await this.move(offset > 0 ? 'ArrowDown' : 'ArrowUp')
    await this.input('Enter')
  }

  /** One item on the tarp, from the register to the verdict; the verdict is given with the hand reaching for the next. */
  private async turnOver(orders: readonly RecordedOrder[], i: number): Promise<number> {
    const item = itemAt(orders, i)
    await this.goTo(3)
    await this.choosePersons([item.inspector])
    if (this.keeper !== item.keeper) {
      this.keeper = item.keeper
      await this.chooseRadio(1, item.keeper)
    }
    await this.focusItem(item.id)
    const isAsBefore = this.handled.length > 0 && item.steps.every((it) => this.handled.includes(it))
    const keys: Readonly<Record<string, string>> = { 'book-out': 'b', 'read-label': 'r', look: 'l', 'test-item': 't' }
    if (this.inHand !== item.id) {
      if (isAsBefore) await this.input('a')
      else for (const step of item.steps) await this.input(keys[step]!)
    }
    if (this.handled.length < item.steps.length) this.handled = item.steps
    this.inHand = ''
    if (item.verdict === undefined) return item.count
    const next = orders[i + item.count]?.do === 'book-out' ? itemAt(orders, i + item.count) : undefined
    if (next?.inspector === item.inspector && next.keeper === item.keeper) {
      await this.focusItem(next.id)
      this.inHand = next.id
    }
    await this.input(item.verdict === 'pass' ? 'p' : 'q')
    return item.count
  }

  private async focusItem(item: string): Promise<void> {
    await this.tabTo('[role=option]')
    const find = () =>
      this.page.evaluate((wanted) => {
        const all = [...document.querySelectorAll<HTMLElement>('[role=option]')]
        return all.findIndex((it) => it.dataset.item === wanted) - all.findIndex((it) => it.ariaSelected === 'true')
      }, item)
    await this.walkBy(await find())
  }

  private async focusThing(thing: string): Promise<void> {
    await this.move('Escape')
    await this.tabTo('[role=treeitem]')
    const offset = await this.page.evaluate((wanted) => {
      const all = [...document.querySelectorAll<HTMLElement>('[role=treeitem]')]
      const here = all.findIndex((it) => it.ariaSelected === 'true')
      const offsets = all.flatMap((it, at) => (it.dataset.thing === wanted ? [at - here] : []))
      return offsets.sort((a, b) => Math.abs(a) - Math.abs(b))[0] ?? null
    }, thing)
    if (offset === null) throw new Error(`${thing} is not in the list`)
    await this.walkBy(offset)
  }

  private async walkBy(offset: number): Promise<void> {
    const pages = Math.trunc(offset / 10)
    for (let k = 0; k < Math.abs(pages); k++) await this.move(offset > 0 ? 'PageDown' : 'PageUp')
    for (let k = 0; k < Math.abs(offset - pages * 10); k++) await this.move(offset > 0 ? 'ArrowDown' : 'ArrowUp')
  }

  /** Along the crew strip: the person under the focus is the chosen one, with Shift one more. */
  private async choosePersons(people: readonly string[]): Promise<void> {
    if (people.join() === this.persons.join()) return
    if (this.place === '3' && people.length === 1) await this.chooseRadio(2, people[0]!)
    else {
      const places = people.map((it) => crew.indexOf(it)).sort((a, b) => a - b)
      await this.goTo(4)
      await this.move('Escape')
      await this.tabTo('[role=treeitem]')
      await this.move('Shift+Tab')
      const here = await this.page.evaluate(() =>
        [...document.querySelectorAll('.crew button')].findIndex((it) => it === document.activeElement),
      )
      const by = places[0]! - here
      // With several marked, one step away and back leaves only the one.
      const away = here === 0 ? 1 : -1
      const steps = by === 0 ? [away, -away] : Array.from({ length: Math.abs(by) }, () => Math.sign(by))
      for (const step of steps) await this.move(step > 0 ? 'ArrowRight' : 'ArrowLeft')
      const isRow = places.every((at, k) => at === places[0]! + k)
      if (!isRow) throw new Error(`${people.join()} do not stand beside each other`)
      for (let k = 1; k < places.length; k++) await this.move('Shift+ArrowRight')
      await this.move('Tab')
    }
    this.persons = people
  }

  private async chooseRadio(group: number, who: string): Promise<void> {
    await this.tabTo(`.gearwho > :nth-child(${group}) [role=radio]`)
    const here = await this.page.evaluate(() => (document.activeElement as HTMLElement).dataset.person!)
    const by = crew.indexOf(who) - crew.indexOf(here)
    for (let k = 0; k < Math.abs(by); k++) await this.move(by > 0 ? 'ArrowRight' : 'ArrowLeft')
  }

  private async waitUntil(second: number): Promise<void> {
    for (let k = 0; k < 400; k++) {
      const now = await this.page.evaluate(() =>
        Number(document.querySelector<HTMLElement>('[data-now]')?.dataset.now ?? -1),
      )
      if (now >= second) return
      this.goOns++
      await this.page.keyboard.press('g')
    }
    throw new Error(`the clock does not reach ${second}`)
  }

  private async goTo(place: number): Promise<void> {
    if (this.place === String(place)) return
    // The site opens on its drawings: the scene needs no drawing for the list.
    const isFirst = place === 4 && !this.hasSite
    this.place = String(place)
    await this.move(`Alt+${place}`)
    if (isFirst) {
      this.hasSite = true
      await this.move('d')
    }
  }

  private async tabTo(selector: string): Promise<void> {
    for (let k = 0; k < 150; k++) {
      if (await this.page.evaluate((wanted) => document.activeElement?.matches(wanted) ?? false, selector)) return
      await this.move('Tab')
    }
    throw new Error(`Tab does not reach ${selector}`)
  }

  private async input(key: string): Promise<void> {
    this.inputs++
    this.counts.set(this.purpose, (this.counts.get(this.purpose) ?? 0) + 1)
    await this.page.keyboard.press(key === ' ' ? 'Space' : key)
  }

  private async move(key: string): Promise<void> {
    this.moves++
    await this.page.keyboard.press(key)
  }
}

interface Handled {
  readonly id: string
  readonly steps: readonly string[]
  readonly keeper: string
  readonly inspector: string
  readonly verdict: unknown
  /** Orders that it takes, the verdict included. */
  readonly count: number
}

/** The orders of one item from its signing out to its verdict. */
function itemAt(orders: readonly RecordedOrder[], i: number): Handled {
  const first = orders[i]!
  let count = 1
  while (orders[i + count]?.on === first.on && ['read-label', 'look', 'test-item'].includes(orders[i + count]!.do))
    count++
  const steps = orders.slice(i, i + count)
  const last = orders[i + count]
  const judged = last?.do === 'judge' && last.on === first.on ? last : undefined
  return {
    id: first.on!,
    steps: steps.map((it) => it.do),
    keeper: first.who,
    inspector: (judged ?? steps.at(-1)!).who,
    verdict: judged?.verdict,
    count: count + (judged ? 1 : 0),
  }
}

/** Three cards of one act on the three conductors are one pick of their heading. */
function headed(cards: readonly string[]): readonly string[] {
  const text = cards.join('|').replace(/(test:[^:|]*:)conductor-a\|\1conductor-b\|\1conductor-c/g, '$1all/conductors')
  return text.split('|')
}

const head = new Set(['at', 'do', 'who', 'on', 'with'])

const valuesOf = (order: RecordedOrder): [string, unknown][] =>
  Object.entries(order).filter(([name]) => !head.has(name))

function thingOf(order: RecordedOrder): string {
  return order.on ?? homes[order.do] ?? order.with ?? 'crew'
}

/** Consecutive orders that one order to several people gives: the same act, each with nothing or a pair of boots. */
function shareOf(orders: readonly RecordedOrder[], i: number): number {
  const first = orders[i]!
  const isShared = (it: RecordedOrder | undefined) =>
    it !== undefined && it.do === first.do && (it.on === undefined || /^BT-/.test(it.on)) && valuesOf(it).length === 0
  let count = 0
  const seen = new Set<string>()
  while (isShared(orders[i + count]) && !seen.has(orders[i + count]!.who)) seen.add(orders[i + count++]!.who)
  return ['sign-on', 'wear', 'take-off'].includes(first.do) ? count : 1
}

function groupAt(orders: readonly RecordedOrder[], i: number): string | undefined {
  const first = orders[i]!
  return Object.keys(groups).find((name) =>
    groups[name]!.every((member, k) => {
      const it = orders[i + k]
      return (
        it?.do === first.do &&
        it.who === first.who &&
        it.with === first.with &&
        it.on === member &&
        valuesOf(it).length === 0
      )
    }),
  )
}
