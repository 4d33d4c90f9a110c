// A plugin for the app's build: JSON that is shipped as text goes without the spaces that are there for people. It reads
// the same, digests included, and is kept on every machine.

import { readFileSync } from 'node:fs'

const query = '?raw'

/** @returns {import('vite').Plugin} */
export function compactJson() {
  return {
    name: 'compact-json',
    apply: 'build',
    enforce: 'pre',
    load(id) {
      if (!id.endsWith(`.json${query}`)) return undefined
      const path = id.slice(0, -query.length)
      this.addWatchFile(path)
      return `export default ${JSON.stringify(JSON.stringify(JSON.parse(readFileSync(path, 'utf8'))))}`
    },
  }
}
