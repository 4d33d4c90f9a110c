/**
 * What must agree among the low voltage, the transformers and other people's sources of a scenario, and which of them
 * name each other.
 */
import { foundText, jsonPath, type Issue } from '../issue'

type Json = Readonly<Record<string, unknown>>
type Path = readonly (string | number)[]

const asObject = (value: unknown): Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Json) : {}
const asList = (value: unknown): readonly Json[] => (Array.isArray(value) ? value.map(asObject) : [])
const phasesIn = (it: Json): readonly unknown[] => (Array.isArray(it.phases) ? it.phases : [])

export function lowVoltageIssues(file: Json): readonly Issue[] {
  const transformers = asList(file.transformers)
  const embedded = asList(file.embedded)
  return [
    ...transformers.flatMap((it, i) => transformerIssues(it, i, asObject(file.section))),
    ...embedded.flatMap((it, i) => sourceIssues(it, i, transformers)),
    ...houseIssues(asObject(file.lv)),
    ...cabinetIssues(file),
    ...feedIssues(asObject(file.lv), transformers),
    ...placeIssues(file, transformers),
    ...asList(file.livenings).flatMap((it, i) => liveningIssues(it, i, asObject(file.lv), embedded)),
  ]
}

function issue(path: Path, found: unknown, allowed: string): Issue {
  return { path: jsonPath(path), found: typeof found === 'string' && found !== '' ? found : foundText(found), allowed }
}

/** For what is there and is not right; what is missing is told by the schema. */
function unless(isRight: boolean, path: Path, found: unknown, allowed: string): readonly Issue[] {
  return found === undefined || isRight ? [] : [issue(path, found, allowed)]
}

const phaseCounts: Readonly<Record<string, number>> = { Dyn: 3, Yyn: 3, 'single-phase': 2, 'single-wire': 1 }
const clocks: Readonly<Record<string, readonly number[]>> = { Dyn: [1, 5, 7, 11], Yyn: [0, 6] }

function transformerIssues(it: Json, i: number, section: Json): readonly Issue[] {
  const path = ['transformers', i]
  const connection = String(it.connection)
  const count = phaseCounts[connection]
  if (count === undefined) return []
  const on = phasesIn(it)
  const isSingleWire = connection === 'single-wire'
  const hours = clocks[connection] ?? []
  const hoursAllowed =
    hours.length === 0 ? 'no hour: it has one winding' : `one of ${hours.join(', ')} of a ${connection}`
  const { alongM, highEarth, loadVA, lowVoltageClosed } = it
  const isOff = typeof alongM === 'number' && typeof section.lengthM === 'number' && Math.abs(alongM) > section.lengthM
  return [
    ...unless(
      on.length === count && new Set(on).size === count,
      [...path, 'phases'],
      on.join(', '),
      count === 1 ? '1 phase' : `${count} different phases`,
    ),
    ...unless(hours.includes(Number(it.clock)), [...path, 'clock'], it.clock, hoursAllowed),
    ...(isSingleWire && highEarth === undefined
      ? [issue([...path, 'highEarth'], highEarth, 'the earth through which the current of a single wire returns')]
      : []),
    ...unless(
      isSingleWire,
      [...path, 'highEarth'],
      highEarth === undefined ? undefined : 'an earth',
      'none: its current returns in the other conductors',
    ),
    ...(lowVoltageClosed === true && loadVA === undefined
      ? [issue([...path, 'loadVA'], loadVA, 'what customers draw behind the closed low-voltage switch')]
      : []),
    ...(isOff ? [issue([...path, 'alongM'], alongM, `within the section, ${String(section.lengthM)} m`)] : []),
  ]
}

/** Phases that its low side gives: three, or the first of the conductors that it is on. */
function lowPhasesOf(transformer: Json): readonly unknown[] {
  return phaseCounts[String(transformer.connection)] === 3 ? ['A', 'B', 'C'] : phasesIn(transformer).slice(0, 1)
}

function sourceIssues(it: Json, i: number, transformers: readonly Json[]): readonly Issue[] {
  const path = ['embedded', i]
  const kind = String(it.kind)
  const isInverter = kind === 'inverter'
  const on = phasesIn(it)
  const behind = transformers.find(({ id }) => id === it.transformer)
  const given = behind === undefined ? on : lowPhasesOf(behind)
  const isKnown = isInverter || kind === 'generator' || kind === 'tie'
  if (!isKnown) return []
  const only = (key: string, of: string, isRight: boolean): readonly Issue[] =>
    unless(isRight, [...path, key], it[key] === undefined ? undefined : 'a value', `none: only ${of} has it`)
  const needed = (key: string, isNeeded: boolean, what: string): readonly Issue[] =>
    isNeeded && it[key] === undefined ? [issue([...path, key], undefined, what)] : []
  return [
    ...(behind === undefined && it.transformer !== undefined
      ? [issue([...path, 'transformer'], it.transformer, `the id of a transformer: ${idsOf(transformers)}`)]
      : []),
    ...unless(
      new Set(on).size === on.length && on.every((phase) => given.includes(phase)),
      [...path, 'phases'],
      on.join(', '),
      `each once, of what its transformer gives: ${given.join(', ')}`,
    ),
    ...needed('impedancePerUnit', !isInverter, `the impedance of a ${kind}`),
    ...only('impedancePerUnit', 'a generator or a tie', !isInverter),
    ...only('stall', 'a generator', kind === 'generator'),
    ...only('limit', 'an inverter', isInverter),
    ...only('tripsS', 'an inverter', isInverter),
    ...needed('limit', isInverter, 'the largest share of its rated current that an inverter gives'),
    ...needed('tripsS', isInverter, 'seconds until it stops, or never'),
  ]
}

function idsOf(things: readonly Json[]): string {
  return things.map((it) => String(it.id)).join(', ')
}

/** The neutral's earths follow each other outward. */
function houseIssues(lv: Json): readonly Issue[] {
  const earths = asList(lv.houseEarths)
  return earths.flatMap(({ distanceM }, i) => {
    const before = earths[i - 1]?.distanceM
    const isBehind = typeof distanceM === 'number' && typeof before === 'number' && distanceM <= before
    return isBehind
      ? [issue(['lv', 'houseEarths', i, 'distanceM'], distanceM, `more than ${before}, the one before`)]
      : []
  })
}

/** A low voltage that a transformer of the section feeds is that transformer's: volts, phases, star earth. */
function feedIssues(lv: Json, transformers: readonly Json[]): readonly Issue[] {
  if (lv.fedBy === undefined) return []
  const by = transformers.find((it) => it.id === lv.fedBy)
  if (by === undefined) {
    return [issue(['lv', 'fedBy'], lv.fedBy, `the id of a transformer: ${idsOf(transformers)}`)]
  }
  const given = lowPhasesOf(by)
  const earth = asObject(by.neutralEarth)
  const own = asObject(lv.neutralEarth)
  return [
    ...unless(
      lv.voltageV === by.lowVoltageV,
      ['lv', 'voltageV'],
      lv.voltageV,
      `${String(by.lowVoltageV)}, as its transformer gives`,
    ),
    ...asList(lv.wires).flatMap(({ phase }, i) =>
      unless(
        phase === 'N' || given.includes(phase),
        ['lv', 'wires', i, 'phase'],
        phase,
        `N or what its transformer gives: ${given.join(', ')}`,
      ),
    ),
    ...unless(
      own.resistanceOhm === earth.resistanceOhm,
      ['lv', 'neutralEarth', 'resistanceOhm'],
      own.resistanceOhm,
      `${String(earth.resistanceOhm)}: the star point is that of its transformer`,
    ),
    ...unless(
      earth.at === undefined,
      ['transformers', transformers.indexOf(by), 'neutralEarth', 'at'],
      earth.at === undefined ? undefined : 'a place',
      'none: lv.neutralEarth has it',
    ),
  ]
}

/** Earths that share the soil stand apart from each other, from the pole and from the stay's anchor. */
function placeIssues(file: Json, transformers: readonly Json[]): readonly Issue[] {
  const lv = asObject(file.lv)
  const fixed = [{ xM: 0, yM: 0 }, asObject(file.stay).anchor, asObject(lv.neutralEarth).at].map(asObject)
  const near: readonly (readonly [Path, Json])[] = [
    ...asList(lv.houseEarths).map((it, i) => [['lv', 'houseEarths', i, 'at'], asObject(it.at)] as const),
    ...transformers.map(
      (it, i) => [['transformers', i, 'neutralEarth', 'at'], asObject(asObject(it.neutralEarth).at)] as const,
    ),
  ]
  return near.flatMap(([path, at], i) => {
    const others = [...fixed, ...near.slice(0, i).map(([, before]) => before)]
    return others.some((other) => isWithinMetre(at, other))
      ? [
          issue(
            path,
            `${String(at.xM)}, ${String(at.yM)}`,
            'at least 1 m from the pole, the anchor and every other earth',
          ),
        ]
      : []
  })
}

/** A key is an item of the register; a wire has lamps or a switch of its own, not both; the neutral has neither. */
function cabinetIssues(file: Json): readonly Issue[] {
  const keys = asList(file.items).filter((it) => it.type === 'cabinet-key')
  return asList(asObject(file.lv).wires).flatMap((wire, i) => {
    const path = ['lv', 'wires', i]
    const own = (['lamps', 'isolator'] as const).filter((name) => wire[name] !== undefined)
    return [
      ...own.flatMap((name) => {
        const { key } = asObject(wire[name])
        return unless(
          keys.some((it) => it.id === key),
          [...path, name, 'key'],
          key,
          `the id of a cabinet key: ${idsOf(keys)}`,
        )
      }),
      ...unless(own.length < 2, [...path, 'isolator'], own[1], 'lamps or a switch of its own, not both'),
      ...unless(wire.phase !== 'N' || own[0] !== 'isolator', [...path, 'isolator'], own[0], 'none: the neutral stays'),
    ]
  })
}

function isWithinMetre(a: Json, b: Json): boolean {
  const [x, y] = [Number(a.xM) - Number(b.xM), Number(a.yM) - Number(b.yM)]
  return Math.sqrt(x * x + y * y) < 1
}

function liveningIssues(it: Json, i: number, lv: Json, embedded: readonly Json[]): readonly Issue[] {
  const wires = asList(lv.wires)
  const wire = wires.find(({ id }) => id === it.wire)
  const path = ['livenings', i]
  const sources = embedded.map(({ id }) => id)
  return [
    ...(it.kind === 'back-feed'
      ? unless(
          sources.includes(it.source),
          [...path, 'source'],
          it.source,
          `the id of a source behind a transformer: ${idsOf(embedded)}`,
        )
      : []),
    ...(it.kind === 'low-voltage-fed'
      ? unless(
          lv.fedBy !== undefined && embedded.some((each) => each.id === it.source && each.transformer === lv.fedBy),
          [...path, 'source'],
          it.source,
          'the id of a source behind the transformer that feeds the low voltage (lv.fedBy)',
        )
      : []),
    ...(it.kind === 'lead-on-low-voltage'
      ? unless(wire !== undefined, [...path, 'wire'], it.wire, `the id of a low-voltage wire: ${idsOf(wires)}`)
      : []),
    ...(it.kind === 'street-lamps-on'
      ? unless(wire?.lamps !== undefined, [...path, 'wire'], it.wire, 'the id of a low-voltage wire with lamps')
      : []),
  ]
}
