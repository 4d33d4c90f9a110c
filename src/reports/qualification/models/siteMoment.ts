/**
 * A moment of a recorded run of a scenario, for cases of whole sites: the scenario's file with what the case sets in it,
 * read as any other file is, the run's orders carried out, at a job second; hands laid on things and things taken away
 * besides.
 */
import {
  actions,
  bodiesAt,
  drawScenario,
  fittedThings,
  runTimeline,
  siteAt,
  withoutThing,
  type LiveMoment,
} from '../../../engine'
import type { Read } from '../../../files/issue'
import { readRun } from '../../../files/run/read'
import { readScenario } from '../../../files/scenario/read'
import { changeJson } from '../changeJson'
import type { Inputs } from '../inputs'
import type { FindScenarioText } from '../model'

const hands = ['left-hand', 'right-hand'] as const
const things = ['conductor', 'metalwork', 'lv-wire'] as const
type Active = Parameters<typeof bodiesAt>[1]

/** Reads where and when, and makes the moment when asked. @throws with the reason on what cannot be made */
export function readMoment(inputs: Inputs, findText: FindScenarioText): () => LiveMoment {
  const scenario = inputs.text('scenario')
  const run = inputs.text('run')
  const second = inputs.number('atS', { atLeast: 0 })
  const changes = inputs.plain('set', {}) as Readonly<Record<string, unknown>>
  const without = inputs.list('without', (it) => ({ item: it.text('item'), ...(it.has('end') ? endOf(it) : {}) }), [])
  const touching: Active = inputs.list('touching', readTouch, [])
  return () => {
    const text = requireText(findText, `${scenario}/scenario.json`)
    const changed = JSON.stringify(changeJson(JSON.parse(text), changes))
    const base = readOrThrow(readScenario(changed))
    const { seed, purpose, orders } = readOrThrow(
      readRun(requireText(findText, `${scenario}/runs/${run}.json`), actions),
    )
    const ordered = orders.filter(({ at }) => at <= second)
    const site = siteAt(runTimeline(drawScenario(base, seed, purpose), ordered), second)
    const moment: LiveMoment = { site, bodies: bodiesAt(site, touching) }
    return without.reduce(taken, moment)
  }
}

interface Taken {
  readonly item: string
  readonly end?: string
}

function endOf(inputs: Inputs): { readonly end: string } {
  return { end: inputs.text('end') }
}

function readTouch(inputs: Inputs) {
  const limb = inputs.oneOf('hand', hands)
  const kind = inputs.oneOf('kind', things)
  return { person: inputs.text('person'), contact: { limb, on: { kind, id: inputs.text('on') }, through: [] } }
}

function taken(moment: LiveMoment, { item, end }: Taken): LiveMoment {
  const thing = fittedThings(moment.site).find((it) => {
    return (it.item ?? 'barrier') === item && (end === undefined ? it.kind !== 'clamp' : 'end' in it && it.end === end)
  })
  if (thing === undefined) throw new Error(`without: ${item} is not fitted then`)
  return withoutThing(moment, thing)
}

function requireText(findText: FindScenarioText, place: string): string {
  const text = findText(place)
  if (text === undefined) throw new Error(`there is no ${place} among the scenarios here`)
  return text
}

function readOrThrow<T>(read: Read<T>): T {
  if (read.ok) return read.value
  throw new Error(
    read.issues.map(({ path, found, allowed }) => `${path}: found ${found}; allowed: ${allowed}`).join('; '),
  )
}
