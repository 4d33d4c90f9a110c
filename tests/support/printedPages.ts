// What a sheet looks like to a printer: a PDF on A4, read back page by page.

import type { Page } from 'playwright'
import { extractText, getDocumentProxy } from 'unpdf'

export interface Printed {
  readonly pdf: Buffer
  /** Words of each page, gaps of the layout as one space. */
  readonly pages: readonly string[]
}

export async function printed(page: Page): Promise<Printed> {
  const pdf = await page.pdf({ format: 'A4', preferCSSPageSize: true, printBackground: true })
  const document = await getDocumentProxy(new Uint8Array(pdf))
  const { text } = await extractText(document, { mergePages: false })
  return { pdf, pages: text.map((words) => words.replace(/\s+/g, ' ')) }
}

/** Width of what is printed on A4 upright between its margins of 12 mm, at 96 pixels an inch. */
const across = Math.round(((210 - 24) / 25.4) * 96)

/** What has more in it than it shows, or runs off the paper, when the page is laid out as for print. */
export async function cutOff(page: Page): Promise<readonly string[]> {
  const before = page.viewportSize()!
  await page.setViewportSize({ width: across, height: 1000 })
  await page.emulateMedia({ media: 'print' })
  const found = await page.evaluate((width) => {
    const shown = [...document.querySelectorAll<HTMLElement>('main *:not(.vh)')].filter((it) => it.checkVisibility())
    const hides = (it: Element): boolean => getComputedStyle(it).overflow !== 'visible' && !(it instanceof SVGElement)
    const isShort = (it: Element): boolean =>
      it.scrollHeight > it.clientHeight + 1 || it.scrollWidth > it.clientWidth + 1
    const short = shown.filter((it) => hides(it) && isShort(it)).map((it) => `${it.tagName}.${it.className} cuts`)
    const off = shown
      .filter((it) => it.getBoundingClientRect().right > width + 1)
      .map((it) => `${it.tagName} ${(it.textContent ?? '').slice(0, 30)} runs off the paper`)
    return [...short, ...off]
  }, across)
  await page.emulateMedia({ media: null })
  await page.setViewportSize(before)
  return found
}
