/**
 * The recorded runs of the scenarios that came with this build, without what they must give. They travel together, which
 * is smaller than the clean ones alone (`.ci/recordedRuns.mjs`).
 */
const runs = import.meta.glob<string>('../../../scenarios/*/scenario.json', {
  query: '?runs',
  import: 'default',
  eager: true,
})

interface Order {
  readonly at: number
}

interface PackedRuns {
  /** Each that differs once, given so many seconds after the one before it. */
  readonly orders: readonly Order[]
  /** By name; orders by how many are passed over before each, or, as text, how often none is. */
  readonly runs: Readonly<Record<string, { readonly actions: readonly (number | string)[] }>>
}

/** Text of each run of a scenario by its name; nothing where there are none. */
export function recordedRuns(scenario: string): Readonly<Record<string, string>> {
  const text = runs[`../../../scenarios/${scenario}/scenario.json`]
  if (text === undefined) return {}
  const packed = JSON.parse(text) as PackedRuns
  return Object.fromEntries(
    Object.entries(packed.runs).map(([name, run]) => [
      name,
      JSON.stringify({ ...run, actions: walked(packed.orders, run.actions) }),
    ]),
  )
}

function walked(orders: readonly Order[], steps: readonly (number | string)[]): readonly Order[] {
  const over = steps.flatMap((step) => (typeof step === 'string' ? Array<number>(Number(step)).fill(0) : [step]))
  let place = -1
  let at = 0
  return over.map((passed) => {
    place += 1 + passed
    const order = orders[place]!
    return { ...order, at: (at += order.at) }
  })
}
