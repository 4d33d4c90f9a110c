/**
 * What the Depot shows of a scenario before anything else of it is fetched. Made when the app is built, from the
 * scenario's own file by the program's own reader, so that nothing is copied by hand (`.ci/folderCards.mjs`).
 */
import { type Part, type ScenarioBase, actions, drawScenario, engineVersion, openingAt, parts } from '../../engine'
import { readRun } from '../../files/run/read'
import { readScenario } from '../../files/scenario/read'
import type { Words } from '../../text'

export interface Station {
  readonly kind: 'switch' | 'pole' | 'crossing'
  readonly along: number
  readonly label: string
}

export interface FolderCard {
  readonly id: string
  /** Version of the engine that this build has. */
  readonly engine: number
  /** Words whose key begins with `scenario.`. */
  readonly words: Words
  /** Volts between conductors. */
  readonly voltage: number
  readonly wires: number
  readonly switches: readonly string[]
  /** What stands along the line, in order; metres from the worked pole. */
  readonly stations: readonly Station[]
  readonly pole: string
  /** Metres, butt included. */
  readonly poleLength: number
  readonly soil: readonly { readonly resistivity: number; readonly thickness?: number }[]
  readonly crew: number
  readonly items: number
  /** Parts of the job that the recorded clean run can prepare. */
  readonly parts: readonly Part[]
}

/** @throws with every issue of a scenario that cannot be read */
export function makeCard(scenario: string, words: string, cleanRun: string | undefined): FolderCard {
  const read = readScenario(scenario)
  if (!read.ok) throw new Error(read.issues.map((it) => `${it.path}: ${it.found}, ${it.allowed}`).join('; '))
  const base = read.value
  return {
    id: base.id,
    engine: engineVersion,
    words: ownWords(words),
    voltage: base.feeders[0]?.voltage ?? 0,
    wires: base.conductors.length,
    switches: base.switches.map((it) => it.label),
    stations: stationsOf(base),
    pole: base.pole.number,
    poleLength: base.pole.height + base.pole.buttLength,
    soil: base.soil.layers,
    crew: base.crew.length,
    items: base.items.length,
    parts: parts.filter((part) => part === 'beginning' || canPrepare(base, cleanRun, part)),
  }
}

function stationsOf({ switches, pole, section, feeders }: ScenarioBase): readonly Station[] {
  const isCrossed = feeders.some(({ id }) => !switches.some((it) => it.feeder === id))
  const stations: readonly Station[] = [
    ...switches.map(({ along, label }) => ({ kind: 'switch' as const, along, label })),
    ...(isCrossed ? [{ kind: 'crossing' as const, along: section.crossingAlong, label: '' }] : []),
    { kind: 'pole', along: 0, label: pole.number },
  ]
  return [...stations].sort((a, b) => a.along - b.along)
}

function ownWords(text: string): Words {
  const { words } = JSON.parse(text) as { words: Words }
  return Object.fromEntries(Object.entries(words).filter(([key]) => key.startsWith('scenario.')))
}

function canPrepare(base: ScenarioBase, cleanRun: string | undefined, part: Part): boolean {
  const run = readRun(cleanRun ?? '', actions)
  if (!run.ok) return false
  return openingAt(drawScenario(base, run.value.seed, run.value.purpose), run.value.orders, part) !== undefined
}
