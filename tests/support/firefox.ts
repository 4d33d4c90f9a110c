// Firefox of the machine, without a window: it opens a page, and what the page sends back is the answer.

import { type ChildProcess, execFileSync, spawn } from 'node:child_process'
import { readFileSync, rmSync, mkdtempSync } from 'node:fs'
import { createServer, type IncomingMessage, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** Where it is: `FIREFOX_PATH`, or Debian's package; undefined when there is none. */
export function findFirefox(): string | undefined {
  const asked = process.env.FIREFOX_PATH
  if (asked !== undefined && asked !== '') return asked
  try {
    return execFileSync('which', ['firefox-esr'], { encoding: 'utf8' }).trim()
  } catch {
    return undefined
  }
}

/**
 * @param folder a built page with index.html
 * @param texts what `/texts` gives
 * @returns what the page posts to `/answer`
 */
export async function answerOfFirefox(program: string, folder: string, texts: unknown): Promise<string> {
  const profile = mkdtempSync(join(tmpdir(), 'earths-on-firefox-'))
  let server: Server | undefined
  let browser: ChildProcess | undefined
  try {
    return await new Promise<string>((resolve, reject) => {
      server = createServer((request, response) => {
        if (request.url === '/answer') void bodyOf(request).then(resolve, reject)
        const [type, body] = contentOf(folder, request.url ?? '/', texts)
        response.writeHead(body === undefined ? 404 : 200, { 'content-type': type }).end(body)
      })
      server.listen(0, '127.0.0.1', () => {
        const { port } = server?.address() as AddressInfo
        const where = `http://127.0.0.1:${port}/`
        browser = spawn(program, ['--headless', '--no-remote', '--profile', profile, where], { stdio: 'ignore' })
        browser.on('error', reject)
        browser.on('exit', (code) => reject(new Error(`Firefox ended with ${code} before it answered`)))
      })
    })
  } finally {
    browser?.removeAllListeners('exit')
    browser?.kill('SIGKILL')
    server?.closeAllConnections()
    server?.close()
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 })
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
