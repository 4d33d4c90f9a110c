/**
 * The same act on several wires in an order in which none is missed: from one side to the other; over none that has not
 * been done (the middle one first and then outward, or along the row); the way other acts went; or that way turned
 * round. Wires are placed by where they hang across the line, blades by phase.
 */
import { withoutPole } from '../../site/nextPole'
import { phases } from '../../site/scenario'
import type { Entry } from '../../timeline/timeline'
import type { RuleKind } from '../language/kind'
import { allMatching, type Pattern } from '../language/pattern'
import { aboutEntry, type RawFinding } from '../language/raw'
import { readFlag, readPatterns, requireText } from '../language/read'
import type { RunView } from '../language/runView'

export const across: RuleKind = {
  id: 'across',
  says: 'the same act on neighbouring wires, from one side to the other',
  isSequence: true,
  occasion: 'of',
  parameters: {
    of: { kind: 'patterns', least: 1, says: 'the acts' },
    way: {
      kind: 'choice',
      of: ['either', 'over-none', 'same-as', 'against'],
      says: 'which way: either, passing over none that is not done yet, as other acts went, or against them',
    },
    as: { kind: 'patterns', optional: true, says: 'those other acts' },
    firstPass: { kind: 'flag', optional: true, says: 'only the first pass is asked' },
  },
  find(view, parameters) {
    const passes = listPasses(view, readPatterns(parameters, 'of'))
    const asked = readFlag(parameters, 'firstPass') ? passes.slice(0, 1) : passes
    const way = requireText(parameters, 'way')
    if (way === 'either') return asked.flatMap((pass) => report(findTurn(pass), pass))
    if (way === 'over-none') return asked.flatMap((pass) => report(findPassedOver(view, pass), pass))
    const other = listPasses(view, readPatterns(parameters, 'as')).find((pass) => pass.length > 1) ?? []
    const model = other.map(({ place }) => place)
    const wanted = way === 'against' ? [...model].reverse() : model
    return asked.flatMap((pass) => report(findOtherwise(pass, wanted), [...pass, ...other]))
  },
}

/** @param row acts whose order among each other it is about */
const report = (entry: Entry | undefined, row: readonly Placed[]): readonly RawFinding[] =>
  entry === undefined
    ? []
    : [{ ...aboutEntry(entry, entry.order.do), touches: row.map(({ entry: { index } }) => index) }]

interface Placed {
  readonly entry: Entry
  readonly place: number
}

/** Acts on wires in the order of the run; a wire done again begins a new pass, so does another switch. */
function listPasses(view: RunView, of: readonly Pattern[]): readonly (readonly Placed[])[] {
  const passes: Placed[][] = []
  for (const entry of allMatching(view, of)) {
    const place = placeOf(view, entry)
    if (place === undefined) continue
    const pass = passes[passes.length - 1]
    const again = pass?.some((other) => other.place === place || ownerOf(other.entry) !== ownerOf(entry)) === true
    if (pass === undefined || again) passes.push([{ entry, place }])
    else pass.push({ entry, place })
  }
  return passes
}

/** The first that turns back. */
function findTurn(pass: readonly Placed[]): Entry | undefined {
  const steps = pass.slice(1).map(({ place }, i) => Math.sign(place - (pass[i]?.place ?? place)))
  const turned = steps.findIndex((step) => step !== steps[0])
  return turned < 0 ? undefined : pass[turned + 1]?.entry
}

/** The first that is reached by passing over a wire of the row that has not been done in this pass. */
function findPassedOver(view: RunView, pass: readonly Placed[]): Entry | undefined {
  const row = rowOf(view, pass)
  return pass.find(({ place }, i) => {
    const from = pass[i - 1]?.place
    if (from === undefined) return false
    const between = row.filter((wire) => wire > Math.min(from, place) && wire < Math.max(from, place))
    return between.some((wire) => !pass.slice(0, i).some((done) => done.place === wire))
  })?.entry
}

/** Places of the wires that hang beside these: all conductors, or all low-voltage wires. */
function rowOf(view: RunView, pass: readonly Placed[]): readonly number[] {
  const { conductors, lv } = view.timeline.scenario
  const isConductor = conductors.some(({ id }) => id === wireOf(pass[0]?.entry))
  return (isConductor ? conductors : lv.wires).map(({ x }) => x)
}

/** The first that comes otherwise than in the model; what the model lacks is passed over. */
function findOtherwise(pass: readonly Placed[], model: readonly number[]): Entry | undefined {
  const known = pass.filter(({ place }) => model.includes(place))
  return known.find(({ place }, i) => i > 0 && model.indexOf(place) < model.indexOf(known[i - 1]?.place ?? place))
    ?.entry
}

/** The switch that a blade belongs to; wires belong to the pole. */
function ownerOf(entry: Entry): string {
  const [owner, blade] = (entry.order.on ?? '').split('/')
  return blade === undefined ? '' : (owner ?? '')
}

const wireOf = (entry: Entry | undefined): string => withoutPole(entry?.order.on ?? '')

/** Metres across the line; blades count 0, 1, 2. */
function placeOf(view: RunView, entry: Entry): number | undefined {
  const on = wireOf(entry)
  const { conductors, lv } = view.timeline.scenario
  const wire = [...conductors, ...lv.wires].find(({ id }) => id === on)
  if (wire !== undefined) return wire.x
  const blade = phases.findIndex((phase) => on.endsWith(`/${phase}`))
  return blade < 0 ? undefined : blade
}
