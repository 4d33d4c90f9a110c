/** The recorded runs of a scenario that came with this build, by name: fetched when somebody wants to grade them anew. */
const runs = import.meta.glob<string>('../../../scenarios/*/scenario.json', { query: '?runs', import: 'default' })

/** Text of each run by its name; nothing where there are none. */
export async function recordedRuns(scenario: string): Promise<Readonly<Record<string, string>>> {
  const load = runs[`../../../scenarios/${scenario}/scenario.json`]
  if (!load) return {}
  const byName = JSON.parse(await load()) as Readonly<Record<string, PackedRun>>
  return Object.fromEntries(Object.entries(byName).map(([name, run]) => [name, JSON.stringify(unpackTimes(run))]))
}

/** Orders by how many seconds after the one before they are given. */
interface PackedRun {
  readonly actions: readonly { readonly at: number }[]
}

function unpackTimes(run: PackedRun): PackedRun {
  let at = 0
  return { ...run, actions: run.actions.map((order) => ({ ...order, at: (at += order.at) })) }
}
