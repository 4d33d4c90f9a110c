// Ways through the sheets that several browser tests take.

import type { Page } from 'playwright'

/** Reads the caution away and opens a job at Marrow Bend from the Depot, at the beginning or at a prepared part. */
export async function openJob(page: Page, part = 'beginning'): Promise<void> {
  await page.locator('dialog[open]').waitFor()
  await page.keyboard.press('Enter')
  await page.getByRole('radio', { name: /^Marrow Bend/ }).click()
  await page.getByLabel('Begin at').selectOption(part)
  await page.getByRole('button', { name: 'Open the job sheet' }).click()
  // The sheets are fetched with the first job: the tabs open when they are here.
  await page.locator('.tabs button[aria-keyshortcuts="Alt+4"]:enabled').waitFor()
  await page.keyboard.press('Alt+4')
  await page.locator('[role=tree]').waitFor()
  // The drawings, not the scene: these tests are about the list.
  await page.keyboard.press('d')
}

/** Chooses a row of the site list and gives an act of its slip by pointer. */
export async function giveAct(page: Page, row: string, act: string, choice?: string): Promise<void> {
  await page.locator(`[role=treeitem][data-key="${row}"]`).click()
  const line = page.locator(`.slip [data-act="${act}"]${choice === undefined ? '' : `[data-choice="${choice}"]`}`)
  await line.click()
}

export const choosePerson = (page: Page, name: string): Promise<void> =>
  page.locator('.crew button').filter({ hasText: name }).click()

/** What the browser keeps of the open job. */
export const keptOrders = (page: Page): Promise<readonly { do: string; who: string; at: number }[]> =>
  page.evaluate(
    () =>
      (
        JSON.parse(localStorage.getItem('earths-on/open-job') ?? '{"orders":[]}') as {
          orders: { do: string; who: string; at: number }[]
        }
      ).orders,
  )

export const clockOf = (page: Page): Promise<string> => page.locator('.clock .n').innerText()
