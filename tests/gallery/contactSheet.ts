// All pictures of the gallery small on one sheet, each with its name.

import { readFileSync } from 'node:fs'
import type { Page } from 'playwright'

export interface Picture {
  readonly name: string
  readonly path: string
}

/** @param width of each picture, pixels */
export async function contactSheet(page: Page, pictures: readonly Picture[], width: number): Promise<Buffer> {
  const cells = pictures.map(({ name, path }) => {
    const source = `data:image/png;base64,${readFileSync(path).toString('base64')}`
    return `<figure><img src="${source}" width="${width}"><figcaption>${name.replaceAll('.', ' ')}</figcaption></figure>`
  })
  const style = `body{margin:8px;font:9px sans-serif;background:white;color:black;display:grid;
    grid-template-columns:repeat(8,${width}px);gap:6px;align-items:end;width:max-content}figure{margin:0}`
  await page.setViewportSize({ width: 8 * (width + 6) + 16, height: 600 })
  await page.setContent(`<style>${style}</style>${cells.join('')}`, { waitUntil: 'load' })
  return page.screenshot({ fullPage: true, type: 'jpeg', quality: 70 })
}
