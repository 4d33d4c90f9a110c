// A plugin for the app's build: JSON that is shipped as text goes without the spaces that are there for people, and
// compressed: the shelf of scenarios, packs and runs repeats itself much. It reads the same, digests included, and is kept
// on every machine. The page unpacks it (src/app/storage/unpack.ts) while the script that asks for it is loading.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { firstOfKind, packedModule } from './packText.mjs'

const query = '?raw'

/** @returns {import('vite').Plugin} */
export function packedJson() {
  let unpack = ''
  return {
    name: 'packed-json',
    apply: 'build',
    enforce: 'pre',
    configResolved: ({ root }) => {
      unpack = join(root, 'src/app/storage/unpack.ts')
    },
    load(id) {
      if (!id.endsWith(`.json${query}`)) return undefined
      const path = id.slice(0, -query.length)
      this.addWatchFile(path)
      const first = firstOfKind(path)
      return packedModule(unpack, textOf(path), first && { id: first + query, text: textOf(first) })
    },
  }
}

const textOf = (path) => JSON.stringify(JSON.parse(readFileSync(path, 'utf8')))
