/** The recorded runs of a scenario that came with this build, by name: fetched when somebody wants to grade them anew. */
const runs = import.meta.glob<string>('../../../scenarios/*/scenario.json', { query: '?runs', import: 'default' })

/** Text of each run by its name; nothing where there are none. */
export async function recordedRuns(scenario: string): Promise<Readonly<Record<string, string>>> {
  const load = runs[`../../../scenarios/${scenario}/scenario.json`]
  if (!load) return {}
  const byName = JSON.parse(await load()) as Readonly<Record<string, unknown>>
  return Object.fromEntries(Object.entries(byName).map(([name, run]) => [name, JSON.stringify(run)]))
}
