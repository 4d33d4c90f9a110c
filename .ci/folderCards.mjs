// A plugin for the app's build: `scenario.json?card` is the card of that scenario (src/app/storage/makeCard.ts), so that
// the Depot can show every scenario without fetching the engine, the readers and the scenarios themselves. `pack.json?card`
// is the name and the caution of that pack.

import { existsSync, readFileSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { tsImport } from 'tsx/esm/api'

const query = '?card'

/** @returns {import('vite').Plugin} */
export function folderCards() {
  // read once: each time would load the engine anew
  let maker
  return {
    name: 'folder-cards',
    async load(id) {
      if (!id.endsWith(query)) return undefined
      const scenario = id.slice(0, -query.length)
      if (basename(scenario) === 'pack.json') return packCard(this, scenario)
      const [words, run] = ['text.en.json', 'runs/clean.json'].map((name) => join(dirname(scenario), name))
      for (const path of [scenario, words, run]) this.addWatchFile(path)
      const read = (path) => readFileSync(path, 'utf8')
      maker ??= tsImport('../src/app/storage/makeCard.ts', import.meta.url)
      const { makeCard } = await maker
      const card = makeCard(read(scenario), read(words), existsSync(run) ? read(run) : undefined)
      return `export default ${JSON.stringify(card)}`
    },
  }
}

function packCard(build, pack) {
  const words = join(dirname(pack), 'text.en.json')
  for (const path of [pack, words]) build.addWatchFile(path)
  const { id } = JSON.parse(readFileSync(pack, 'utf8'))
  const said = JSON.parse(readFileSync(words, 'utf8')).words
  return `export default ${JSON.stringify({ id, name: said['pack.name'] ?? id, caution: said['pack.caution'] ?? '' })}`
}
