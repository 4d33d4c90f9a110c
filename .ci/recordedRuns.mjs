// A plugin for the app: `scenario.json?runs` is the text of all recorded runs of that scenario, by name, without what
// they must give. They repeat each other, so the build compresses them together; each order says how many seconds after
// the one before it is given, because runs that part for a while then read the same again (a third of the size). The page
// unpacks them when they are asked for (src/app/storage/unpack.ts, src/app/storage/recordedRuns.ts).

import { existsSync, readFileSync, readdirSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { gzipSync } from 'node:zlib'

const query = '?runs'

/** @returns {import('vite').Plugin} */
export function recordedRuns() {
  let isBuilt = false
  let unpack = ''
  return {
    name: 'recorded-runs',
    enforce: 'pre',
    configResolved: ({ root, command }) => {
      isBuilt = command === 'build'
      unpack = join(root, 'src/app/storage/unpack.ts')
    },
    load(id) {
      if (!id.endsWith(query)) return undefined
      const folder = join(dirname(id), 'runs')
      const names = existsSync(folder) ? readdirSync(folder).filter((name) => name.endsWith('.json')) : []
      const runs = names.sort().map((name) => {
        this.addWatchFile(join(folder, name))
        const run = JSON.parse(readFileSync(join(folder, name), 'utf8'))
        delete run.expect
        run.actions = run.actions.map((order, i) => ({ ...order, at: order.at - (run.actions[i - 1]?.at ?? 0) }))
        return [name.slice(0, -'.json'.length), run]
      })
      const text = JSON.stringify(Object.fromEntries(runs))
      if (!isBuilt) return `export default ${JSON.stringify(text)}`
      const packed = gzipSync(text, { level: 9 }).toString('base64')
      return `import { unpack } from ${JSON.stringify(unpack)}\nexport default await unpack('${packed}')`
    },
  }
}
