/** What must agree with what in a scenario: geometry that can be built, phases that are all there, roles that are filled. */
import { foundText, jsonPath, type Issue } from '../issue'
import { lowVoltageIssues } from './lowVoltageIssues'
import { networkIssues } from './networkIssues'
import { placeIssues } from './placeIssues'

type Json = Readonly<Record<string, unknown>>

const asObject = (value: unknown): Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Json) : {}
const asList = (value: unknown): readonly Json[] => (Array.isArray(value) ? value.map(asObject) : [])

export function consistencyIssues(file: Json): readonly Issue[] {
  return [
    ...soilIssues(asObject(file.soil)),
    ...poleIssues(asObject(file.pole)),
    ...groundIssues(file),
    ...phaseIssues(file),
    ...roleIssues(file),
    ...labelIssues(file),
    ...rangeIssues(file),
    ...lowVoltageIssues(file),
    ...protectionIssues(file),
    ...networkIssues(file),
    ...placeIssues(file),
  ]
}

function issue(path: readonly (string | number)[], found: unknown, allowed: string): Issue {
  return { path: jsonPath(path), found: typeof found === 'string' && found !== '' ? found : foundText(found), allowed }
}

/** Both numbers there and the first not at most the second. */
function isOver(low: unknown, high: unknown): boolean {
  return typeof low === 'number' && typeof high === 'number' && low > high
}

/** The upper of two layers has a thickness; the lowest goes down for ever. */
function soilIssues(soil: Json): readonly Issue[] {
  const layers = asList(soil.layers)
  return layers.flatMap(({ thicknessM }, i) => {
    const isLowest = i === layers.length - 1
    if (isLowest === (thicknessM === undefined)) return []
    const path = ['soil', 'layers', i, 'thicknessM']
    return [
      issue(
        path,
        thicknessM,
        isLowest ? 'no thickness: the lowest layer has no end' : 'the thickness of the upper layer',
      ),
    ]
  })
}

function poleIssues(pole: Json): readonly Issue[] {
  const { heightM, armHeightM, lvHeightM, stepBoltsToM, cageRadiusM, concreteCoverM, diameterM } = pole
  const above = (name: string, value: unknown, limit: unknown, what: string): readonly Issue[] =>
    isOver(value, limit) ? [issue(['pole', name], value, `at most ${String(limit)}, ${what}`)] : []
  const cage =
    typeof cageRadiusM === 'number' && typeof concreteCoverM === 'number' ? cageRadiusM + concreteCoverM : undefined
  const half = typeof diameterM === 'number' ? diameterM / 2 + 1e-9 : undefined
  return [
    ...above('armHeightM', armHeightM, heightM, 'the height of the pole'),
    ...above('lvHeightM', lvHeightM, armHeightM, 'the height of the arm'),
    ...above('stepBoltsToM', stepBoltsToM, heightM, 'the height of the pole'),
    ...(isOver(cage, half) ? [issue(['pole', 'cageRadiusM'], cageRadiusM, 'cage and its cover inside the pole')] : []),
  ]
}

/** What is in the ground stands apart: the pole, the stay's anchor, the earth of the low-voltage neutral. */
function groundIssues(file: Json): readonly Issue[] {
  const stay = asObject(file.stay)
  const anchor = asObject(stay.anchor)
  const earth = asObject(asObject(asObject(file.lv).neutralEarth).at)
  const atPole = { xM: 0, yM: 0 }
  const length = stay.anchorLengthM
  const radius = stay.anchorRadiusM
  return [
    ...(areNear(anchor, atPole) ? [issue(['stay', 'anchor'], placeText(anchor), 'at least 1 m from the pole')] : []),
    ...(areNear(earth, atPole) || areNear(earth, anchor)
      ? [
          issue(
            ['lv', 'neutralEarth', 'at'],
            placeText(earth),
            'at least 1 m from the pole and from the anchor of the stay',
          ),
        ]
      : []),
    ...(typeof radius === 'number' && isOver(2 * radius, length)
      ? [issue(['stay', 'anchorLengthM'], length, 'twice the radius of the anchor or more')]
      : []),
  ]
}

function areNear(a: Json, b: Json): boolean {
  const [x, y] = [Number(a.xM) - Number(b.xM), Number(a.yM) - Number(b.yM)]
  return Math.sqrt(x * x + y * y) < 1
}

function placeText({ xM, yM }: Json): string {
  return `${String(xM)}, ${String(yM)}`
}

/** Each phase once in a set, and all in one of three; no conductor inside another's metal; a neutral below. */
function phaseIssues(file: Json): readonly Issue[] {
  const sets: readonly (readonly [readonly (string | number)[], readonly Json[]])[] = [
    [['conductors'], asList(file.conductors)],
    ...asList(file.feeders).map((it, i) => [['feeders', i, 'conductors'], asList(it.conductors)] as const),
    ...asList(file.parallels).map((it, i) => [['parallels', i, 'conductors'], asList(it.conductors)] as const),
  ]
  const wires = asList(asObject(file.lv).wires)
  return [
    ...sets.flatMap(([path, set]) => [...eachPhaseOnce(path, set), ...apartIssues(path, set, 'radiusM')]),
    ...apartIssues(['lv', 'wires'], wires),
    ...(wires.length > 0 && wires.filter((it) => it.phase === 'N').length !== 1
      ? [issue(['lv', 'wires'], wires.map((it) => String(it.phase)).join(', '), 'exactly one neutral, N')]
      : []),
  ]
}

function eachPhaseOnce(path: readonly (string | number)[], set: readonly Json[]): readonly Issue[] {
  const got = set
    .map((it) => String(it.phase))
    .sort()
    .join(', ')
  if (set.length === 3) return got !== 'A, B, C' ? [issue(path, got, 'the phases A, B, C, each once')] : []
  const isTwice = set.length === 2 && set[0]?.phase !== undefined && set[0].phase === set[1]?.phase
  return isTwice ? [issue(path, got, 'each phase once')] : []
}

function apartIssues(path: readonly (string | number)[], set: readonly Json[], radius?: string): readonly Issue[] {
  return set.flatMap((it, i) => {
    const { gmrM, radiusM } = it
    const inside =
      radius !== undefined && isOver(gmrM, radiusM) ? [issue([...path, i, 'gmrM'], gmrM, 'at most the radius')] : []
    const touching = set.slice(0, i).some((other) => isTouching(it, other))
    return [...inside, ...(touching ? [issue([...path, i, 'xM'], it.xM, 'a place of its own')] : [])]
  })
}

/** What is no number is told where it stands; it is nowhere, so it touches nothing. */
function isTouching(a: Json, b: Json): boolean {
  if (![a.xM, b.xM, a.heightM, b.heightM].every((it) => typeof it === 'number')) return false
  const [x, y] = [Number(a.xM) - Number(b.xM), Number(a.heightM) - Number(b.heightM)]
  const radii = Number(a.radiusM ?? 0) + Number(b.radiusM ?? 0)
  return Math.sqrt(x * x + y * y) <= Math.max(radii, 0.01)
}

function roleIssues(file: Json): readonly Issue[] {
  const roles = asList(file.crew).flatMap((it) => (it.arrivesAtS === undefined ? [it.role] : []))
  const needed = ['person-in-charge', 'pole-worker', 'ground-worker', 'switching-operator']
  const missing = needed.filter((role) => !roles.includes(role))
  return roles.length > 0 && missing.length > 0
    ? [issue(['crew'], `nobody as ${missing.join(', ')}`, 'each role filled by somebody who is there from the start')]
    : []
}

function labelIssues(file: Json): readonly Issue[] {
  return asList(file.items).flatMap((item, i) => {
    const { bandLowV, bandHighV } = asObject(item.label)
    return isOver(bandLowV, bandHighV) ? [issue(['items', i, 'label', 'bandLowV'], bandLowV, 'at most bandHighV')] : []
  })
}

function rangeIssues(file: Json): readonly Issue[] {
  const of = asList(file.ranges).map((it) => it.of)
  return of.flatMap((it, i) => (of.indexOf(it) < i ? [issue(['ranges', i, 'of'], it, 'each range once')] : []))
}

/** A relay falls back only by a curve that has a reset of its own; a carrier is put back only where there are carriers. */
function protectionIssues(file: Json): readonly Issue[] {
  const withFuses = asList(file.switches).filter((it) => it.fuses !== undefined)
  const known = asList(file.switches).map((it) => it.id)
  return [
    ...asList(file.feeders).flatMap((it, i) => {
      const relays = [it.earthFault, it.overcurrent, it.sensitiveEarthFault].map((relay) => asObject(relay).curve)
      const hasReset = relays.some((curve) => typeof curve === 'string' && curve.startsWith('ieee-'))
      const isWrong = it.relayReset === 'by-curve' && !hasReset
      const allowed = 'at-once or kept: none of its relays has a curve with a reset of its own'
      return isWrong ? [issue(['feeders', i, 'relayReset'], it.relayReset, allowed)] : []
    }),
    ...asList(file.livenings).flatMap((it, i) => {
      const isWrong =
        it.kind === 'fuse-carrier' && known.includes(it.switch) && !withFuses.some(({ id }) => id === it.switch)
      return isWrong ? [issue(['livenings', i, 'switch'], it.switch, 'the id of a switch with fuses')] : []
    }),
  ]
}
