// A plugin for the app: `scenario.json?runs` is the text of all recorded runs of that scenario, by name, without what
// they must give. They repeat each other: each order that differs is written once, with how many seconds after the one
// before it it is given, because runs that part for a while then read the same again; a run is a walk through that list.
// The page puts them together when they are asked for (src/app/storage/recordedRuns.ts).

import { existsSync, readFileSync, readdirSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { firstOfKind, packedModule } from './packText.mjs'

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
      const scenario = id.slice(0, -query.length)
      for (const path of runsOf(scenario)) this.addWatchFile(path)
      const text = textOf(scenario)
      if (!isBuilt) return `export default ${JSON.stringify(text)}`
      const first = firstOfKind(scenario)
      return packedModule(unpack, text, first && { id: first + query, text: textOf(first) })
    },
  }
}

function runsOf(scenario) {
  const folder = join(dirname(scenario), 'runs')
  const names = existsSync(folder) ? readdirSync(folder).filter((name) => name.endsWith('.json')) : []
  return names.sort().map((name) => join(folder, name))
}

function textOf(scenario) {
  const places = new Map()
  const runs = runsOf(scenario).map((path) => {
    const { actions, ...run } = JSON.parse(readFileSync(path, 'utf8'))
    delete run.expect
    const walk = actions.map((order, i) => {
      const line = JSON.stringify({ ...order, at: order.at - (actions[i - 1]?.at ?? 0) })
      if (!places.has(line)) places.set(line, places.size)
      return places.get(line)
    })
    return [path.split(/[\\/]/).at(-1).slice(0, -'.json'.length), { ...run, actions: inSteps(walk) }]
  })
  return JSON.stringify({ orders: [...places.keys()].map((line) => JSON.parse(line)), runs: Object.fromEntries(runs) })
}

/** How many places are passed over before each order; how often in a row it is none, as text. */
function inSteps(walk) {
  const steps = []
  walk.forEach((place, i) => {
    const over = place - (walk[i - 1] ?? -1) - 1
    if (over !== 0) steps.push(over)
    else if (typeof steps.at(-1) === 'string') steps.push(String(Number(steps.pop()) + 1))
    else steps.push('1')
  })
  return steps
}
