// A built page is opened in a browser, and what it sends back is the answer. Chromium comes with the tests; Firefox is
// the one of the machine, run without a window.

import { execFileSync, spawn } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { createServer, type IncomingMessage } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from 'playwright'
import { requireChromium } from '../../.ci/chromium.mjs'

/** Opens an address; what it gives back closes the browser. `onEnd`: it ended by itself. */
export type OpenIn = (where: string, onEnd: (error: Error) => void) => Promise<() => Promise<void> | void>

export const inChromium: OpenIn = async (where) => {
  const browser = await chromium.launch(await requireChromium())
  await (await browser.newPage()).goto(where)
  return () => browser.close()
}

/** Firefox: `FIREFOX_PATH`, or Debian's package; undefined when there is none. */
export function findFirefox(): OpenIn | undefined {
  const program = process.env.FIREFOX_PATH ?? found('firefox-esr')
  if (program === undefined) return undefined
  return async (where, onEnd) => {
    const profile = mkdtempSync(join(tmpdir(), 'earths-on-firefox-'))
    const browser = spawn(program, ['--headless', '--no-remote', '--profile', profile, where], { stdio: 'ignore' })
    browser.on('error', onEnd)
    browser.on('exit', (code) => onEnd(new Error(`Firefox ended with ${code} before it answered`)))
    return () => {
      browser.removeAllListeners('exit')
      browser.kill('SIGKILL')
      rmSync(profile, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 })
    }
  }
}

function found(program: string): string | undefined {
  try {
    return execFileSync('which', [program], { encoding: 'utf8' }).trim()
  } catch {
    return undefined
  }
}

/**
 * @param folder a built page with index.html
 * @param texts what `/texts` gives
 * @returns what the page posts to `/answer`
 */
export async function answerElsewhere(openIn: OpenIn, folder: string, texts: unknown): Promise<string> {
  let answered: (text: string) => void = () => undefined
  let failed: (error: Error) => void = () => undefined
  const answer = new Promise<string>((resolve, reject) => {
    answered = resolve
    failed = reject
  })
  const server = createServer((request, response) => {
    if (request.url === '/answer') void bodyOf(request).then(answered, failed)
    const [type, body] = contentOf(folder, request.url ?? '/', texts)
    response.writeHead(body === undefined ? 404 : 200, { 'content-type': type }).end(body)
  })
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready))
  const close = await openIn(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`, failed)
  try {
    return await answer
  } finally {
    await close()
    server.closeAllConnections()
    server.close()
  }
}

async function bodyOf(request: IncomingMessage): Promise<string> {
  const parts: Buffer[] = []
  for await (const part of request) parts.push(part as Buffer)
  return Buffer.concat(parts).toString('utf8')
}

function contentOf(folder: string, url: string, texts: unknown): readonly [string, string | undefined] {
  if (url === '/texts') return ['application/json', JSON.stringify(texts)]
  if (url === '/answer') return ['text/plain', '']
  const path = url === '/' ? 'index.html' : url.slice(1)
  try {
    return [path.endsWith('.js') ? 'text/javascript' : 'text/html', readFileSync(join(folder, path), 'utf8')]
  } catch {
    return ['text/plain', undefined]
  }
}
