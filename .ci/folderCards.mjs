// A plugin for the app's build: `scenario.json?card` is the card of that scenario (src/app/storage/makeCard.ts), so that
// the Depot can show every scenario without fetching the engine, the readers and the scenarios themselves.

import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { tsImport } from 'tsx/esm/api'

const query = '?card'

/** @returns {import('vite').Plugin} */
export function folderCards() {
  return {
    name: 'folder-cards',
    async load(id) {
      if (!id.endsWith(query)) return undefined
      const scenario = id.slice(0, -query.length)
      const [words, run] = ['text.en.json', 'runs/clean.json'].map((name) => join(dirname(scenario), name))
      for (const path of [scenario, words, run]) this.addWatchFile(path)
      const read = (path) => readFileSync(path, 'utf8')
      const { makeCard } = await tsImport('../src/app/storage/makeCard.ts', import.meta.url)
      const card = makeCard(read(scenario), read(words), existsSync(run) ? read(run) : undefined)
      return `export default ${JSON.stringify(card)}`
    },
  }
}
