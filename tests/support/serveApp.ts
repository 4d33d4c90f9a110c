// Before the browser tests: builds the app if a source changed, and serves the build on a free port of this machine.

import { type PreviewServer, preview } from 'vite'
import type { TestProject } from 'vitest/node'
import { ensureBuilt } from '../../.ci/ensure.mjs'

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built app answers, without a slash at the end. */
    origin: string
  }
}

let server: PreviewServer | undefined

export async function setup(project: TestProject): Promise<void> {
  ensureBuilt()
  server = await preview({ logLevel: 'error', preview: { host: '127.0.0.1', port: 0, strictPort: true } })
  const address = server.httpServer.address()
  if (address === null || typeof address === 'string') throw new Error('the server has no port')
  project.provide('origin', `http://127.0.0.1:${address.port}`)
}

export async function teardown(): Promise<void> {
  await server?.close()
}
