/**
 * What must agree in the lines of a scenario and their sources: phases on both sides of a switch, a way back for every
 * current, neutral wires that are one wire, circuits beside the section where the section is, livenings that can happen.
 */
import { foundText, jsonPath, type Issue } from '../issue'

type Json = Readonly<Record<string, unknown>>
type Path = readonly (string | number)[]

/** More earths of a neutral wire than this make a circuit that is too large to solve at every moment of a run. */
const mostEarths = 400

const asObject = (value: unknown): Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Json) : {}
const asList = (value: unknown): readonly Json[] => (Array.isArray(value) ? value.map(asObject) : [])

export function networkIssues(file: Json): readonly Issue[] {
  const feeders = asList(file.feeders)
  return [
    ...feeders.flatMap((it, i) => sourceIssues(['feeders', i], it)),
    ...feeders.flatMap((it, i) => neutralWireIssues(['feeders', i, 'neutralWire'], it, file)),
    ...oneNeutralIssues(file),
    ...switchIssues(file),
    ...asList(file.parallels).flatMap((it, i) => parallelIssues(['parallels', i], it, file)),
    ...asList(file.livenings).flatMap((it, i) => liveningIssues(['livenings', i], it, file)),
  ]
}

function issue(path: Path, found: unknown, allowed: string): Issue {
  return { path: jsonPath(path), found: typeof found === 'string' && found !== '' ? found : foundText(found), allowed }
}

function phasesOf(set: unknown): readonly string[] {
  return asList(set)
    .map((it) => it.phase)
    .filter((it): it is string => typeof it === 'string')
}

function isNothing({ resistanceOhm, reactanceOhm }: Json): boolean {
  return resistanceOhm === 0 && reactanceOhm === 0
}

/** No source without impedance; a single wire needs its transformer's end on the station's earth. */
function sourceIssues(path: Path, feeder: Json): readonly Issue[] {
  const neutral = asObject(feeder.neutral)
  const isSingle = phasesOf(feeder.conductors).length === 1
  const hasNoWayBack = neutral.kind === 'unearthed' || neutral.kind === 'arc-suppression-coil'
  return [
    ...(isNothing(asObject(feeder.sourceImpedance))
      ? [issue([...path, 'sourceImpedance'], '0 Ω', 'a resistance or a reactance other than 0')]
      : []),
    ...(neutral.kind === 'reactor' && isNothing(asObject(neutral.impedance))
      ? [issue([...path, 'neutral', 'impedance'], '0 Ω', 'a resistance or a reactance other than 0; or kind solid')]
      : []),
    ...(isSingle && hasNoWayBack
      ? [
          issue(
            [...path, 'neutral', 'kind'],
            neutral.kind,
            'solid, resistor or reactor: the earth is its only way back',
          ),
        ]
      : []),
  ]
}

function neutralWireIssues(path: Path, feeder: Json, file: Json): readonly Issue[] {
  if (feeder.neutralWire === undefined) return []
  const wire = asObject(feeder.neutralWire)
  const neutral = asObject(feeder.neutral)
  const at = asObject(asObject(wire.poleEarth).at)
  const anchor = asObject(asObject(file.stay).anchor)
  const radius = Number(asObject(wire.poleEarth).radiusM) + Number(asObject(file.pole).diameterM) / 2
  const beside = [...asList(feeder.conductors), ...asList(file.conductors), ...asList(asObject(file.lv).wires)]
  return [
    ...(neutral.kind === 'unearthed' || neutral.kind === 'arc-suppression-coil'
      ? [issue(path, 'a neutral wire', `no neutral wire where the neutral is ${neutral.kind}`)]
      : []),
    ...(Number(wire.gmrM) > Number(wire.radiusM) ? [issue([...path, 'gmrM'], wire.gmrM, 'at most the radius')] : []),
    ...(beside.some((it) => isTouching(it, wire)) ? [issue([...path, 'xM'], wire.xM, 'a place of its own')] : []),
    ...(idsOf(file).includes(wire.id) ? [issue([...path, 'id'], wire.id, 'an id that nothing else here has')] : []),
    ...(distance(at, { xM: 0, yM: 0 }) < radius + 0.1 || distance(at, anchor) < 1
      ? [
          issue(
            [...path, 'poleEarth', 'at'],
            placeText(at),
            '0.1 m clear of the pole and 1 m of the anchor of the stay',
          ),
        ]
      : []),
  ]
}

/** Of everything that a clamp or an order could mean instead of the wire. */
function idsOf(file: Json): readonly unknown[] {
  const lists = [file.conductors, file.feeders, file.switches, file.items, file.parallels, asObject(file.lv).wires]
  return lists.flatMap(asList).map((it) => it.id)
}

/** Feeders at both ends of the section have one neutral wire through it; whoever only crosses has another. */
function oneNeutralIssues(file: Json): readonly Issue[] {
  const joined = asList(file.switches).map((it) => it.feeder)
  const wires = asList(file.feeders).flatMap(({ id, neutralWire, lengthM }, i) => {
    if (neutralWire === undefined) return []
    return [{ i, wire: asObject(neutralWire), length: Number(lengthM), isJoined: joined.includes(id) }]
  })
  const through = wires.find((it) => it.isJoined)
  if (through === undefined) return []
  const { low, high } = extentOf(file)
  const length = wires.filter((it) => it.isJoined).reduce((sum, it) => sum + it.length, high - low)
  const every = through.wire.earthEveryM
  return wires.flatMap(({ i, wire, isJoined }) => {
    if (i === through.i && length / Number(every) > mostEarths) {
      const allowed = `so far apart that there are at most ${mostEarths} on all feeders and the section`
      return [issue(['feeders', i, 'neutralWire', 'earthEveryM'], every, allowed)]
    }
    if (isJoined && !isDeepEqual(wire, through.wire)) {
      return [issue(['feeders', i, 'neutralWire'], String(wire.id), `the same wire as feeders[${through.i}] has`)]
    }
    const isSame = !isJoined && wire.id === through.wire.id
    return isSame ? [issue(['feeders', i, 'neutralWire', 'id'], wire.id, 'an id that nothing else here has')] : []
  })
}

/** Values and keys; in whatever order. */
function isDeepEqual(a: unknown, b: unknown): boolean {
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b
  const keys = [...new Set([...Object.keys(a), ...Object.keys(b)])]
  return keys.every((key) => isDeepEqual((a as Json)[key], (b as Json)[key]))
}

/** Every conductor of the section has one of the feeder to come from, and every hung blade a conductor. */
function switchIssues(file: Json): readonly Issue[] {
  const own = phasesOf(file.conductors)
  return asList(file.switches).flatMap((it, i) => {
    const feeder = asList(file.feeders).find(({ id }) => id === it.feeder)
    const missing = feeder === undefined ? [] : own.filter((phase) => !phasesOf(feeder.conductors).includes(phase))
    const hung = Array.isArray(it.hungBlades) ? it.hungBlades : []
    return [
      ...(missing.length > 0
        ? [issue(['switches', i, 'feeder'], it.feeder, `a feeder with phase ${[...new Set(missing)].join(', ')}`)]
        : []),
      ...hung.flatMap((phase: unknown, k) => {
        const isOne = own.length === 0 || typeof phase !== 'string' || own.includes(phase)
        return isOne
          ? []
          : [issue(['switches', i, 'hungBlades', k], phase, `a phase of the section: ${own.join(', ')}`)]
      }),
    ]
  })
}

/** From the first switch to the last, worked pole and crossing included: metres along the line. */
function extentOf(file: Json): { readonly low: number; readonly high: number } {
  const along = [...asList(file.switches).map((it) => it.alongM), asObject(file.section).crossingAlongM, 0].filter(
    (it): it is number => typeof it === 'number',
  )
  return { low: Math.min(...along), high: Math.max(...along) }
}

function parallelIssues(path: Path, parallel: Json, file: Json): readonly Issue[] {
  const { low, high } = extentOf(file)
  const { fromM, toM } = parallel
  const beside = [
    ...asList(file.conductors),
    ...asList(file.feeders).flatMap((it) => (it.neutralWire === undefined ? [] : [asObject(it.neutralWire)])),
  ]
  const feeder = asList(file.feeders).find((it) => it.id === parallel.feeder)
  const missing = phasesOf(parallel.conductors).filter((it) => !phasesOf(feeder?.conductors).includes(it))
  return [
    ...(feeder !== undefined && feeder.voltageV !== parallel.voltageV
      ? [issue([...path, 'voltageV'], parallel.voltageV, `${String(feeder.voltageV)}, as its feeder`)]
      : []),
    ...(feeder !== undefined && missing.length > 0
      ? [issue([...path, 'feeder'], parallel.feeder, `a feeder with phase ${missing.join(', ')}`)]
      : []),
    ...(Number(fromM) < low ? [issue([...path, 'fromM'], fromM, `at least ${low}, where the section begins`)] : []),
    ...(Number(toM) > high ? [issue([...path, 'toM'], toM, `at most ${high}, where the section ends`)] : []),
    ...(Number(toM) < Number(fromM) + 1 ? [issue([...path, 'toM'], toM, 'at least 1 m beyond fromM')] : []),
    ...asList(parallel.conductors).flatMap((it, k) =>
      beside.some((other) => isTouching(it, other))
        ? [issue([...path, 'conductors', k, 'xM'], it.xM, 'a place of its own')]
        : [],
    ),
  ]
}

function liveningIssues(path: Path, livening: Json, file: Json): readonly Issue[] {
  const { kind, phase } = livening
  const feeder = asList(file.feeders).find((it) => it.id === feederId(livening, file))
  const parallel = asList(file.parallels).find((it) => it.id === livening.parallel)
  const onSection = kind === 'clash' || kind === 'clash-two' || kind === 'coil-fed' || kind === 'fuse-carrier'
  const wanted = [phase, ...(Array.isArray(livening.phases) ? livening.phases : [])].filter((it) => it !== undefined)
  const sets: readonly (readonly [Json | undefined, string])[] = [
    [onSection ? file : undefined, 'the section'],
    [feeder, 'the feeder'],
    [parallel, 'the parallel circuit'],
  ]
  const where = phase === undefined ? 'phases' : 'phase'
  return [
    ...sets.flatMap(([of, name]) => {
      const has = of === undefined ? [] : phasesOf(of.conductors)
      const isMissing = has.length > 0 && wanted.some((it) => !has.includes(String(it)))
      return isMissing ? [issue([...path, where], wanted.join(', '), `of ${name}: ${has.join(', ')}`)] : []
    }),
    ...(kind === 'induction' && parallel !== undefined && parallel.faultCurrentA === undefined
      ? [issue([...path, 'parallel'], livening.parallel, 'a parallel circuit with faultCurrentA')]
      : []),
    ...(kind === 'pick-up' && parallel?.feeder !== undefined
      ? [issue([...path, 'parallel'], livening.parallel, 'a parallel circuit without a feeder: a network of its own')]
      : []),
    ...(kind === 'pick-up' && parallel !== undefined && phasesOf(parallel.conductors).length === 1
      ? [issue([...path, 'parallel'], livening.parallel, 'a parallel circuit of two or three phases')]
      : []),
    ...(kind === 'neutral-raised' && feeder !== undefined && feeder.neutralWire === undefined
      ? [issue([...path, 'feeder'], livening.feeder, 'a feeder with a neutralWire')]
      : []),
    ...(kind === 'coil-fed' && feeder !== undefined && asObject(feeder.neutral).kind !== 'arc-suppression-coil'
      ? [issue([...path, 'switch'], livening.switch, 'a switch to a feeder with an arc-suppression-coil')]
      : []),
  ]
}

function feederId(livening: Json, file: Json): unknown {
  if (livening.switch === undefined) return livening.feeder
  return asList(file.switches).find((it) => it.id === livening.switch)?.feeder
}

/** What is no number is told where it stands; it is nowhere, so it touches nothing. */
function isTouching(a: Json, b: Json): boolean {
  const apart = distance({ xM: a.xM, yM: a.heightM }, { xM: b.xM, yM: b.heightM })
  return apart <= Math.max(Number(a.radiusM ?? 0) + Number(b.radiusM ?? 0), 0.01)
}

function distance(a: Json, b: Json): number {
  const [x, y] = [Number(a.xM) - Number(b.xM), Number(a.yM) - Number(b.yM)]
  return Math.sqrt(x * x + y * y)
}

function placeText({ xM, yM }: Json): string {
  return `${String(xM)}, ${String(yM)}`
}
