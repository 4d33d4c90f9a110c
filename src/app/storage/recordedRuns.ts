/**
 * The recorded runs of the scenarios that came with this build, without what they must give. They travel together, which
 * is smaller than the clean ones alone.
 */
const runs = import.meta.glob<string>('../../../scenarios/*/scenario.json', {
  query: '?runs',
  import: 'default',
  eager: true,
})

/** Text of each run of a scenario by its name; nothing where there are none. */
export function recordedRuns(scenario: string): Readonly<Record<string, string>> {
  const text = runs[`../../../scenarios/${scenario}/scenario.json`]
  if (text === undefined) return {}
  const byName = JSON.parse(text) as Readonly<Record<string, PackedRun>>
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
