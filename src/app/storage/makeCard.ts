/**
 * What the Depot shows of a scenario before anything else of it is fetched. Made when the app is built, from the
 * scenario's own file by the program's own reader, so that nothing is copied by hand (`.ci/folderCards.mjs`).
 */
import { type Part, type ScenarioBase, actions, drawScenario, engineVersion, openingAt, parts } from '../../engine'
import { readRun } from '../../files/run/read'
import type { Run } from '../../files/run/run'
import { readScenario } from '../../files/scenario/read'
import type { Words } from '../../text'

export interface Station {
  readonly kind: 'switch' | 'pole' | 'crossing'
  readonly along: number
  readonly label: string
}

/** What a place has that another has not; the list at the Depot can be cut down to it. */
export type Trait =
  | 'low-voltage'
  | 'lamps'
  | 'transformer'
  | 'own-source'
  | 'crossing'
  | 'beside'
  | 'neutral-wire'
  | 'coil'
  | 'earth-return'
  | 'stay'
  | 'terminal'
  | 'next-pole'
  | 'bucket'
  | 'shift'
  | 'dark'

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
  readonly poleKind: ScenarioBase['pole']['kind'] | 'double'
  /** Metres, butt included. */
  readonly poleLength: number
  readonly soil: readonly { readonly resistivity: number; readonly thickness?: number }[]
  readonly traits: readonly Trait[]
  /** As written, and seconds after midnight. */
  readonly date: string
  readonly startsAt: number
  readonly crew: number
  readonly items: number
  /** Whose rules its clean run keeps. */
  readonly pack?: string
  /** Parts of the job that the recorded clean run can prepare. */
  readonly parts: readonly Part[]
}

/** @throws with every issue of a scenario that cannot be read */
export function makeCard(scenario: string, words: string, cleanRun: string | undefined): FolderCard {
  const read = readScenario(scenario)
  if (!read.ok) throw new Error(read.issues.map((it) => `${it.path}: ${it.found}, ${it.allowed}`).join('; '))
  const base = read.value
  const clean = readRun(cleanRun ?? '', actions)
  return {
    id: base.id,
    engine: engineVersion,
    words: ownWords(words),
    voltage: base.feeders[0]?.voltage ?? 0,
    wires: base.conductors.length,
    switches: base.switches.map((it) => it.label),
    stations: stationsOf(base),
    pole: base.pole.number,
    poleKind: base.pole.secondLeg ? 'double' : base.pole.kind,
    poleLength: base.pole.height + base.pole.buttLength,
    soil: base.soil.layers,
    traits: traitsOf(base),
    date: base.date,
    startsAt: base.startsAt,
    crew: base.crew.filter((it) => it.arrivesAt === undefined).length,
    items: base.items.length,
    ...(clean.ok ? { pack: clean.value.pack } : {}),
    parts: parts.filter((part) => part === 'beginning' || (clean.ok && canPrepare(base, clean.value, part))),
  }
}

const isCrossed = ({ feeders, switches }: ScenarioBase): boolean =>
  feeders.some(({ id }) => !switches.some((it) => it.feeder === id))

function traitsOf(base: ScenarioBase): readonly Trait[] {
  const { lv, transformers = [], embedded = [], parallels = [], feeders } = base
  const has: Readonly<Record<Trait, boolean>> = {
    'low-voltage': lv.wires.length > 0,
    lamps: lv.wires.some((it) => it.lamps),
    transformer: transformers.length > 0,
    'own-source': embedded.some((it) => it.kind !== 'tie'),
    crossing: isCrossed(base),
    beside: parallels.length > 0,
    'neutral-wire': feeders.some((it) => it.neutralWire),
    coil: feeders.some((it) => it.neutral.kind === 'arc-suppression-coil'),
    'earth-return': base.conductors.length === 1,
    stay: base.stay !== undefined,
    terminal: base.pole.kind === 'concrete' && base.pole.integralEarth !== undefined,
    'next-pole': base.nextPole !== undefined,
    bucket: base.truck?.boom !== undefined,
    shift: base.crew.some((it) => it.arrivesAt !== undefined),
    dark: base.dark !== undefined,
  }
  return (Object.keys(has) as Trait[]).filter((trait) => has[trait])
}

function stationsOf(base: ScenarioBase): readonly Station[] {
  const { switches, pole, section } = base
  const stations: readonly Station[] = [
    ...switches.map(({ along, label }) => ({ kind: 'switch' as const, along, label })),
    ...(isCrossed(base) ? [{ kind: 'crossing' as const, along: section.crossingAlong, label: '' }] : []),
    { kind: 'pole', along: 0, label: pole.number },
  ]
  return [...stations].sort((a, b) => a.along - b.along)
}

function ownWords(text: string): Words {
  const { words } = JSON.parse(text) as { words: Words }
  return Object.fromEntries(Object.entries(words).filter(([key]) => key.startsWith('scenario.')))
}

const canPrepare = (base: ScenarioBase, clean: Run, part: Part): boolean =>
  openingAt(drawScenario(base, clean.seed, clean.purpose), clean.orders, part) !== undefined
