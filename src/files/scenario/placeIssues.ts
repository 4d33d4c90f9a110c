/**
 * What must agree of the things on pole and ground: what they are fixed to exists, and whatever is in the soil stands
 * apart; a livening that needs a truck, an earth, a handle with an earth or a switch worked from afar finds one.
 */
import { foundText, jsonPath, type Issue } from '../issue'

type Json = Readonly<Record<string, unknown>>
type Path = readonly (string | number)[]

const asObject = (value: unknown): Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Json) : {}
const asList = (value: unknown): readonly Json[] => (Array.isArray(value) ? value.map(asObject) : [])

export function placeIssues(file: Json): readonly Issue[] {
  return [
    ...fixingIssues(file),
    ...heightIssues(file),
    ...soilPlaceIssues(file),
    ...nextPoleIssues(file),
    ...sectionJumperIssues(file),
    ...liveningIssues(file),
  ]
}

function issue(path: Path, found: unknown, allowed: string): Issue {
  return { path: jsonPath(path), found: typeof found === 'string' && found !== '' ? found : foundText(found), allowed }
}

const idsOf = (value: unknown): readonly string[] =>
  asList(value).flatMap((it) => (typeof it.id === 'string' ? [it.id] : []))

/** Metal that metal can be fixed to. */
function metalIds(file: Json): readonly string[] {
  const own = ['arm', 'stay-upper', 'stay-lower']
  const terminal = asObject(file.pole).integralEarth === undefined ? [] : ['terminal']
  const truck = file.truck === undefined ? [] : ['truck']
  return [...own, ...terminal, ...truck, ...idsOf(asObject(file.lv).wires), ...idsOf(file.metalwork)]
}

function fixingIssues(file: Json): readonly Issue[] {
  const known = metalIds(file)
  const unknown = (path: Path, to: unknown, among: readonly string[]): readonly Issue[] =>
    typeof to !== 'string' || among.includes(to) ? [] : [issue(path, to, `one of ${among.join(', ')}`)]
  return [
    ...asList(file.metalwork).flatMap(({ id, on }, i) =>
      unknown(['metalwork', i, 'on'], on, ['pole', ...known.filter((it) => it !== id)]),
    ),
    ...asList(file.grounds).flatMap(({ joins }, i) =>
      joins === undefined
        ? []
        : unknown(['grounds', i, 'joins', 'to'], asObject(joins).to, [...known, ...idsOf(file.grounds)]),
    ),
  ]
}

function heightIssues(file: Json): readonly Issue[] {
  const top = asObject(file.pole).heightM
  const above = (path: Path, height: unknown): readonly Issue[] =>
    typeof height === 'number' && typeof top === 'number' && height > top
      ? [issue(path, height, `at most ${top}, the height of the pole`)]
      : []
  return [
    ...above(['pole', 'integralEarth', 'heightM'], asObject(asObject(file.pole).integralEarth).heightM),
    ...asList(file.metalwork).flatMap(({ heightM }, i) => above(['metalwork', i, 'heightM'], heightM)),
  ]
}

interface InSoil {
  readonly path: Path
  readonly x: number
  readonly y: number
}

function inSoil(path: Path, at: unknown): readonly InSoil[] {
  const { xM, yM } = asObject(at)
  return typeof xM === 'number' && typeof yM === 'number' ? [{ path, x: xM, y: yM }] : []
}

/** Nearer than this two electrodes would be one, metres. */
const leastApart = 0.5

function soilPlaceIssues(file: Json): readonly Issue[] {
  const standing = [
    ...inSoil(['pole'], { xM: 0, yM: 0 }),
    ...inSoil(['stay', 'anchor'], asObject(file.stay).anchor),
    ...inSoil(['lv', 'neutralEarth', 'at'], asObject(asObject(file.lv).neutralEarth).at),
  ]
  const more = [
    ...inSoil(['pole', 'secondLeg', 'at'], asObject(asObject(file.pole).secondLeg).at),
    ...asList(file.grounds).flatMap((it, i) => [
      ...inSoil(['grounds', i, 'at'], it.at),
      ...asList(it.posts).flatMap((post, k) => inSoil(['grounds', i, 'posts', k], post)),
    ]),
    ...asList(file.switches).flatMap(({ alongM, handleEarthOhm }, i) =>
      handleEarthOhm === undefined ? [] : inSoil(['switches', i, 'alongM'], { xM: alongM, yM: 0 }),
    ),
  ]
  const pads = asList(asObject(file.truck).outriggers).flatMap((it, i) => {
    const offset = asObject(it.offset)
    return inSoil(['truck', 'outriggers', i], {
      xM: Number(offset.xM) + truckStart(file).x,
      yM: Number(offset.yM) + truckStart(file).y,
    })
  })
  return [...more, ...pads].flatMap((it, i) => {
    const near = [...standing, ...[...more, ...pads].slice(0, i)].find((other) => apart(it, other) < leastApart)
    if (near === undefined) return []
    return [issue(it.path, `${it.x}, ${it.y}`, `at least ${leastApart} m from ${jsonPath(near.path)}`)]
  })
}

/** It starts where the ground worker does, or else whoever starts on the ground. */
function truckStart(file: Json): { readonly x: number; readonly y: number } {
  const crew = asList(file.crew)
  const starts = [...crew.filter((it) => it.role === 'ground-worker'), ...crew].map((it) => asObject(it.startsAt))
  const start = starts.find((it) => typeof it.xM === 'number' && typeof it.yM === 'number')
  return { x: Number(start?.xM ?? 0), y: Number(start?.yM ?? 0) }
}

function apart(a: InSoil, b: InSoil): number {
  return Math.sqrt((a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y))
}

/** Near enough to be the next one, far enough to be another; nothing that the model knows at the worked pole alone. */
function nextPoleIssues(file: Json): readonly Issue[] {
  if (file.nextPole === undefined) return []
  const { alongM } = asObject(file.nextPole)
  const wires = idsOf(asObject(file.lv).wires)
  return [
    ...(typeof alongM === 'number' && Math.abs(alongM) < 20
      ? [issue(['nextPole', 'alongM'], alongM, 'at least 20 m from the worked pole')]
      : []),
    ...(wires.length > 0 ? [issue(['lv', 'wires'], wires.join(', '), 'none where there is a nextPole')] : []),
    ...(asObject(file.pole).secondLeg === undefined
      ? []
      : [issue(['pole', 'secondLeg'], 'two legs', 'one where there is a nextPole')]),
  ]
}

/** Nearer than a span's worth it is the worked pole; at an end of the section nothing lies beyond it. */
function sectionJumperIssues(file: Json): readonly Issue[] {
  const ends = asList(file.switches).flatMap(({ alongM }) => (typeof alongM === 'number' ? [alongM] : []))
  return asList(file.sectionJumpers).flatMap(({ alongM }, i) => {
    if (typeof alongM !== 'number') return []
    const path = ['sectionJumpers', i, 'alongM']
    if (Math.abs(alongM) < 10) return [issue(path, alongM, 'at least 10 m from the worked pole')]
    return alongM > Math.min(...ends) && alongM < Math.max(...ends) ? [] : [issue(path, alongM, 'between the switches')]
  })
}

function liveningIssues(file: Json): readonly Issue[] {
  const earths = idsOf(asList(file.grounds).filter((it) => it.kind === 'earth'))
  const conductors = idsOf(file.conductors)
  return asList(file.livenings).flatMap((it, i): readonly Issue[] => {
    const path = ['livenings', i]
    const at = asList(file.switches).find(({ id }) => id === it.switch)
    switch (it.kind) {
      case 'boom-touches':
        return file.truck === undefined ? [issue([...path, 'kind'], it.kind, 'a scenario with a truck')] : []
      case 'conductor-down':
      case 'neighbour-fault':
        return typeof it.thing !== 'string' || earths.includes(it.thing)
          ? []
          : [issue([...path, 'thing'], it.thing, `an earth of grounds: ${earths.join(', ')}`)]
      case 'jumper-back':
        return typeof it.at !== 'string' || idsOf(file.sectionJumpers).includes(it.at)
          ? []
          : [issue([...path, 'at'], it.at, `one of sectionJumpers: ${idsOf(file.sectionJumpers).join(', ')}`)]
      case 'conductor-falls':
        return typeof it.onto !== 'string' || conductors.includes(it.onto)
          ? []
          : [issue([...path, 'onto'], it.onto, `one of ${conductors.join(', ')}`)]
      case 'handle-live':
        return at === undefined || at.handleEarthOhm !== undefined
          ? []
          : [issue([...path, 'switch'], it.switch, 'a switch with a handleEarthOhm')]
      case 'remote-close':
        return at === undefined || at.remote === true
          ? []
          : [issue([...path, 'switch'], it.switch, 'a switch that is remote')]
      default:
        return []
    }
  })
}
