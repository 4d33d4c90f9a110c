/** Figures that a pack may set limits to, each rounded to what a crew can measure. */
import { effectiveParameters, requireItem } from '../site/questions'
import type { GroundPoint } from '../site/place'
import type { Site } from '../site/site'
import { thighAt } from '../site/stations'
import type { Entry } from '../timeline/timeline'
import type { Measure } from './language/kind'
import { findItemOf, type RunView } from './language/runView'
import { clearanceInside, clearanceOfPoint, electrodePoints, locatedPoints } from './predicates/ground'
import { polesInUse, workedPole } from './predicates/workedPole'

/** A tape on the ground reads to a centimetre. */
const centimetre = (metres: number): number => Math.round(metres * 100) / 100

const thighAloft = ({ scenario }: Site): number => thighAt(scenario.pole, 'above-lv')

function findPoint(entry: Entry, name: string): GroundPoint | undefined {
  const value = entry.order.values[name]
  return typeof value === 'object' && 'x' in value ? value : undefined
}

function labelled(view: RunView, entry: Entry, name: string): number | undefined {
  const id = findItemOf(view, entry)
  if (id === undefined) return undefined
  const value = effectiveParameters(requireItem(entry.before, id))[name]
  return value === undefined || typeof value === 'boolean' ? undefined : Number(value)
}

const all: readonly Measure[] = [
  {
    id: 'rod-depth',
    says: 'depth of the shallowest rod in the ground',
    unit: 'metre',
    measure: (_view, { after }) =>
      after.rods.length === 0 ? undefined : Math.min(...after.rods.map((rod) => rod.depth)),
  },
  {
    id: 'rod-to-located',
    says: 'from the rod of the act to the nearest ground where services were looked for',
    unit: 'metre',
    measure: (_view, entry) => {
      const at = findPoint(entry, 'at')
      const located = locatedPoints(entry.before)
      return at === undefined || located.length === 0 ? undefined : centimetre(clearanceOfPoint(at, located))
    },
  },
  {
    id: 'rod-to-pole',
    says: 'from the nearest rod to the pole',
    unit: 'metre',
    measure: (_view, { after }) =>
      after.rods.length === 0
        ? undefined
        : centimetre(Math.min(...after.rods.map((rod) => clearanceOfPoint(rod.at, polesInUse(after))))),
  },
  {
    id: 'barrier-clearance',
    says: 'from the barrier to the nearest rod or the pole inside it; below zero when one stands outside',
    unit: 'metre',
    measure: (_view, { after }) => {
      const { barrier } = after
      if (barrier === null) return undefined
      return centimetre(Math.min(...electrodePoints(after).map((point) => clearanceInside(barrier, point))))
    },
  },
  {
    id: 'barrier-around-anchor',
    says: 'from the barrier to the stay anchor inside it; below zero when it stands outside',
    unit: 'metre',
    measure: (_view, { after }) => {
      const { barrier, scenario } = after
      const isHere = scenario.stay !== undefined && workedPole(after) === undefined
      return barrier === null || !isHere ? undefined : centimetre(clearanceInside(barrier, scenario.stay.anchor))
    },
  },
  {
    id: 'place-to-electrodes',
    says: 'from the place named in the act to the nearest rod or the pole',
    unit: 'metre',
    measure: (_view, entry) => {
      const at = findPoint(entry, 'at')
      return at === undefined ? undefined : centimetre(clearanceOfPoint(at, electrodePoints(entry.after)))
    },
  },
  {
    id: 'cover-below-thigh',
    says: 'how far the cover reaches below the thigh of who works at the top; below zero when it begins above it',
    unit: 'metre',
    measure: (_view, { after }) => (after.cover ? centimetre(thighAloft(after) - after.cover.from) : undefined),
  },
  {
    id: 'cover-above-thigh',
    says: 'how far the cover reaches above that thigh',
    unit: 'metre',
    measure: (_view, { after }) => (after.cover ? centimetre(after.cover.to - thighAloft(after)) : undefined),
  },
  {
    id: 'item-class',
    says: 'class of the item in the act',
    unit: 'none',
    measure: (view, entry) => labelled(view, entry, 'class'),
  },
  {
    id: 'item-area',
    says: 'copper section of the lead in the act',
    unit: 'millimetre2',
    measure: (view, entry) => labelled(view, entry, 'area'),
  },
  {
    id: 'item-length',
    says: 'length of the item in the act',
    unit: 'metre',
    measure: (view, entry) => labelled(view, entry, 'length'),
  },
  {
    id: 'band-margin',
    says: 'how far the nominal voltage of the section lies inside the band of the detector in the act; below zero when outside',
    unit: 'none',
    measure: (view, entry) => {
      const low = labelled(view, entry, 'bandLow')
      const high = labelled(view, entry, 'bandHigh')
      const supply = view.timeline.scenario.switches.find(({ closed }) => closed)?.feeder
      const nominal = view.timeline.scenario.feeders.find(({ id }) => id === supply)?.voltage
      if (low === undefined || high === undefined || nominal === undefined) return undefined
      return Math.min(nominal - low, high - nominal)
    },
  },
]

export const measures: ReadonlyMap<string, Measure> = new Map(all.map((measure) => [measure.id, measure]))
