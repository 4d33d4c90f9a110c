// A plugin for the app's build: the service worker as one more script beside the page, with the list of everything that
// was built written into it.

import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

const script = 'offline.js'
const place = '%KEPT%'

/** @returns {import('vite').Plugin} */
export function offlineApp() {
  let publicDir = ''
  return {
    name: 'offline-app',
    apply: 'build',
    enforce: 'post',
    configResolved: (config) => {
      publicDir = config.publicDir
    },
    buildStart() {
      this.emitFile({ type: 'chunk', id: 'src/app/workers/offline.ts', fileName: script })
    },
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const worker = bundle[script]
        if (worker?.type !== 'chunk' || !worker.code.includes(place)) this.error(`${script} has no place for its list`)
        const fixed = readdirSync(publicDir)
        const files = [...Object.keys(bundle).filter((name) => name !== script), ...fixed].sort()
        const hash = createHash('sha256')
        for (const name of files)
          hash.update(name).update(fixed.includes(name) ? readFileSync(join(publicDir, name)) : contentOf(bundle[name]))
        const kept = JSON.stringify({ edition: hash.digest('hex').slice(0, 16), files })
        worker.code = worker.code.replace(place, kept)
      },
    },
  }
}

const contentOf = (output) => (output.type === 'chunk' ? output.code : output.source)
