/**
 * Keeps the built app on this machine, so that it runs without a network after the first visit (a service worker). Which
 * files, and their edition, the build writes in (`.ci/offlineApp.mjs`). A newer edition waits until no page of the old one
 * is open, so that a page never finds its own scripts gone.
 */
interface Waiting {
  waitUntil(work: Promise<unknown>): void
}

interface Asked {
  readonly request: Request
  respondWith(answer: Promise<Response>): void
}

/** The part of a service worker's surroundings that is used here: the types of a page do not know it. */
interface Surroundings {
  readonly clients: { claim(): Promise<void> }
  addEventListener(type: 'install' | 'activate', listener: (event: Waiting) => void): void
  addEventListener(type: 'fetch', listener: (event: Asked) => void): void
}

const surroundings = self as unknown as Surroundings
const { edition, files } = JSON.parse('%KEPT%') as { readonly edition: string; readonly files: readonly string[] }

const prefix = 'earths-on/'
const own = prefix + edition

/** A network that does not answer the page's own address for so long counts as none, milliseconds. */
const patience = 3000

async function keepFiles(): Promise<void> {
  const cache = await caches.open(own)
  await cache.addAll(files.map((file) => new Request(file, { cache: 'no-cache' })))
}

async function forgetOthers(): Promise<void> {
  const names = await caches.keys()
  await Promise.all(names.filter((name) => name.startsWith(prefix) && name !== own).map((name) => caches.delete(name)))
  await surroundings.clients.claim()
}

/** The page itself comes from the network while there is one: a newer edition is seen at once. */
async function page(request: Request): Promise<Response> {
  try {
    return await fetch(request, { signal: AbortSignal.timeout(patience) })
  } catch {
    return (await (await caches.open(own)).match('index.html')) ?? Response.error()
  }
}

/**
 * Everything else has its content in its name: what is kept is as good as new, whoever asks and with whatever headers (a
 * server may say that its answer varies with them).
 */
const file = async (request: Request): Promise<Response> =>
  (await (await caches.open(own)).match(request.url, { ignoreVary: true })) ?? fetch(request)

surroundings.addEventListener('install', (event) => event.waitUntil(keepFiles()))
surroundings.addEventListener('activate', (event) => event.waitUntil(forgetOthers()))
surroundings.addEventListener('fetch', (event) => {
  const { request } = event
  if (request.method !== 'GET' || new URL(request.url).origin !== location.origin) return
  event.respondWith(request.mode === 'navigate' ? page(request) : file(request))
})
