/** A job that is shown: act by act, to and fro, taken over; the recorded clean run stands for what the worker would say. */

import { readFileSync } from 'node:fs'
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest'
import { headFor } from '../../../src/app/stores/headFor'
import { exportRun } from '../../../src/app/stores/exportRun'
import { jobStore } from '../../../src/app/stores/jobStore'
import { leaveJob } from '../../../src/app/stores/openJob'
import { backTo, give, goOn, undo } from '../../../src/app/stores/orders'
import { findSavedJob } from '../../../src/app/stores/saveJob'
import { backAPart, doItYourself, jumpTo, oneOn, openShown, takeOver } from '../../../src/app/stores/showJob'
import { shownStore } from '../../../src/app/stores/shownStore'
import type { ShowAnswer } from '../../../src/app/workers/showing'
import { actions } from '../../../src/engine'
import { readRun } from '../../../src/files/run/read'

const read = readRun(readFileSync('scenarios/marrow-bend/runs/clean.json', 'utf8'), actions)
if (!read.ok) throw new Error('the recorded run cannot be read')
const { orders, seed, pack } = read.value
const openings = [
  { part: 'beginning', orders: 0 },
  { part: 'gear', orders: orders.findIndex((it) => it.do === 'book-out') },
  { part: 'isolated', orders: orders.findIndex((it) => it.do === 'take-permit') + 1 },
] as const

interface FakeWorker {
  isAsked: boolean
  onmessage?: (event: { readonly data: ShowAnswer }) => void
}

const workers: FakeWorker[] = []

beforeAll(() => {
  vi.stubGlobal(
    'Worker',
    class {
      isAsked = false
      onmessage?: (event: { readonly data: ShowAnswer }) => void
      constructor() {
        workers.push(this)
      }
      postMessage() {
        this.isAsked = true
      }
      terminate() {
        this.isAsked = false
      }
    },
  )
  vi.useFakeTimers()
})
afterAll(() => {
  vi.useRealTimers()
  vi.unstubAllGlobals()
})
afterEach(leaveJob)

const tell = (data: ShowAnswer): void => workers.at(-1)!.onmessage!({ data })

function openAt(startsAt = 'beginning'): void {
  openShown(headFor('marrow-bend', seed, 'practise', { pack, startsAt }))
  tell({ tell: 'job', job: { orders, openings, declined: null } })
}

const given = (): number => jobStore.getState().ordered

describe('being shown', () => {
  it('waits for the orders, then gives them one by one at their seconds', () => {
    openShown(headFor('marrow-bend', seed, 'practise', { pack }))
    expect(workers.at(-1)?.isAsked).toBe(true)
    oneOn()
    expect(given()).toBe(0)
    tell({ tell: 'job', job: { orders, openings, declined: null } })
    oneOn()
    oneOn()
    expect(given()).toBe(2)
    expect(jobStore.getState().now).toBe(orders[1]!.at)
  })

  it('plays by itself as fast as it is asked to, and stops where it ends', () => {
    openAt()
    shownStore.setState({ pace: 'fast' })
    vi.advanceTimersByTime(60_000)
    expect(given()).toBeGreaterThan(5)
    jumpTo(orders.length - 1)
    vi.advanceTimersByTime(60_000)
    expect(given()).toBe(orders.length)
    expect(shownStore.getState().isPlaying).toBe(false)
    expect(jobStore.getState().busy).toEqual([])
  })

  it('begins at the part that was chosen; back a part, and to any', () => {
    openAt('isolated')
    expect(given()).toBe(openings[2].orders)
    oneOn()
    backAPart()
    expect(given()).toBe(openings[2].orders)
    backAPart()
    expect(given()).toBe(openings[1].orders)
    jumpTo(openings[2].orders + 3)
    expect(given()).toBe(openings[2].orders + 3)
  })

  it('nobody else orders, and nobody else moves the clock', () => {
    openAt('gear')
    const before = jobStore.getState()
    expect(give({ do: 'read-weather', values: {} }, ['pic'])).toBe(false)
    expect(goOn()).toBe(false)
    undo()
    backTo(0)
    expect(jobStore.getState()).toMatchObject({ ordered: before.ordered, now: before.now })
  })

  it('is kept as shown, and taken out as shown', () => {
    openAt('gear')
    expect(findSavedJob()?.head.isShowing).toBe(true)
    expect(JSON.parse(exportRun())).toMatchObject({ shown: openings[1].orders })
  })
})

describe('taken over', () => {
  it('goes on with the orders so far; what was shown stays marked, also in the file', () => {
    openAt('gear')
    takeOver()
    expect(jobStore.getState().head).toMatchObject({ shown: openings[1].orders, purpose: 'practise' })
    expect(jobStore.getState().head?.isShowing).toBeUndefined()
    expect(goOn()).toBe(true)
    expect(give({ do: 'read-weather', values: {} }, ['pic'])).toBe(true)
    expect(given()).toBe(openings[1].orders + 1)
    const run = readRun(exportRun(), actions)
    expect(run.ok && run.value.shown).toBe(openings[1].orders)
  })

  it('orders that are taken back are no longer shown ones', () => {
    openAt('gear')
    takeOver()
    backTo(3)
    expect(jobStore.getState().head?.shown).toBe(3)
  })

  it('done by oneself from the beginning it is a run like any other', () => {
    openAt('gear')
    doItYourself()
    expect(jobStore.getState().head).not.toHaveProperty('shown')
    expect(jobStore.getState().head).not.toHaveProperty('isShowing')
    expect(given()).toBe(0)
    expect(JSON.parse(exportRun())).not.toHaveProperty('shown')
  })
})
