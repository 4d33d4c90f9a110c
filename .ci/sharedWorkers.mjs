// A plugin for the app's build: a worker is one more entry of the page's own build, so that page and worker fetch the
// engine once. Left alone, the bundler would put a second copy of it into the worker's script.

import { dirname, resolve } from 'node:path'

const workerAddress = /new URL\('([^']*\/workers\/[^']+)', import\.meta\.url\)/g

/** @returns {import('vite').Plugin} */
export function sharedWorkers() {
  return {
    name: 'shared-workers',
    apply: 'build',
    enforce: 'pre',
    transform(code, id) {
      if (!id.includes('/src/app/') || !code.includes('new Worker(')) return undefined
      return code.replace(workerAddress, (_, path) => {
        const chunk = this.emitFile({ type: 'chunk', id: resolve(dirname(id), path) })
        return `import.meta.ROLLUP_FILE_URL_${chunk}`
      })
    },
  }
}
