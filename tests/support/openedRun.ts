// A recorded run, or its beginning, opened at the Depot as a file that somebody brings in.

import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { Page } from 'playwright'

interface Order {
  readonly do: string
  readonly who: string
  readonly on?: string
  readonly with?: string
}

interface RecordedRun {
  readonly actions: readonly Order[]
}

const runPath = (scenario: string, run: string): string =>
  fileURLToPath(new URL(`../../scenarios/${scenario}/runs/${run}.json`, import.meta.url))

export const hasRun = (scenario: string, run: string): boolean => existsSync(runPath(scenario, run))

/** The run up to and with the first of this act; whole when it has none, or none is named. */
export function runUpTo(scenario: string, run: string, act?: string): string {
  const recorded = JSON.parse(readFileSync(runPath(scenario, run), 'utf8')) as RecordedRun
  const last = recorded.actions.findIndex((order) => order.do === act)
  return JSON.stringify({ ...recorded, actions: recorded.actions.slice(0, last < 0 ? undefined : last + 1) })
}

/** The run up to, but without, the first of this act; and that order as it was recorded. */
export function runBefore(scenario: string, run: string, act: string): { readonly run: string; readonly order: Order } {
  const recorded = JSON.parse(readFileSync(runPath(scenario, run), 'utf8')) as RecordedRun
  const first = recorded.actions.findIndex((order) => order.do === act)
  const order = recorded.actions[first]
  if (!order) throw new Error(`${run} has no ${act}`)
  return { run: JSON.stringify({ ...recorded, actions: recorded.actions.slice(0, first) }), order }
}

/** From the Depot; the job is open at the end of the run afterwards. */
export async function bringIn(page: Page, run: string): Promise<void> {
  const file = { name: 'run.json', mimeType: 'application/json', buffer: Buffer.from(run) }
  await page.locator('input[type=file]').setInputFiles(file)
  await page.locator('main.depot').waitFor({ state: 'detached' })
}
