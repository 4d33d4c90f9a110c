/**
 * The same act on several wires goes from one side to the other, so that none is missed and the tool never passes over
 * one that has not been done. Wires are placed by where they hang across the line, blades by phase.
 */
import { phases } from '../../site/scenario'
import type { Entry } from '../../timeline/timeline'
import type { RuleKind } from '../language/kind'
import { allMatching, type Pattern } from '../language/pattern'
import { aboutEntry, type RawFinding } from '../language/raw'
import { readFlag, readPatterns, readText } from '../language/read'
import type { RunView } from '../language/runView'

export const across: RuleKind = {
  id: 'across',
  says: 'the same act on neighbouring wires, from one side to the other',
  parameters: {
    of: { kind: 'patterns', least: 1, says: 'the acts' },
    way: {
      kind: 'choice',
      of: ['either', 'same-as', 'against'],
      says: 'which way: either, the same as other acts went, or against them',
    },
    as: { kind: 'patterns', optional: true, says: 'those other acts' },
    firstPass: { kind: 'flag', optional: true, says: 'only the first pass is asked' },
  },
  find(view, parameters) {
    const passes = listPasses(view, readPatterns(parameters, 'of'))
    const asked = readFlag(parameters, 'firstPass') ? passes.slice(0, 1) : passes
    const way = requiredWay(view, readText(parameters, 'way') ?? 'either', readPatterns(parameters, 'as'))
    return asked.flatMap((pass) => findTurn(pass, way))
  },
}

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

function wayOf(pass: readonly Placed[]): number {
  const [first, second] = pass
  return first === undefined || second === undefined ? 0 : Math.sign(second.place - first.place)
}

/** 1, -1, or 0 when any way will do. */
function requiredWay(view: RunView, way: string, as: readonly Pattern[]): number {
  if (way === 'either') return 0
  const other = listPasses(view, as).find((pass) => pass.length > 1)
  const went = other === undefined ? 0 : wayOf(other)
  return way === 'against' ? -went : went
}

function findTurn(pass: readonly Placed[], required: number): readonly RawFinding[] {
  const way = required === 0 ? wayOf(pass) : required
  if (way === 0) return []
  const turned = pass.slice(1).find(({ place }, i) => Math.sign(place - (pass[i]?.place ?? place)) !== way)
  return turned === undefined ? [] : [aboutEntry(turned.entry, turned.entry.order.do)]
}

/** The switch that a blade belongs to; wires belong to the pole. */
function ownerOf(entry: Entry): string {
  const [owner, blade] = (entry.order.on ?? '').split('/')
  return blade === undefined ? '' : (owner ?? '')
}

/** Metres across the line; blades count 0, 1, 2. */
function placeOf(view: RunView, entry: Entry): number | undefined {
  const { on } = entry.order
  const { conductors, lv } = view.timeline.scenario
  const wire = [...conductors, ...lv.wires].find(({ id }) => id === on)
  if (wire !== undefined) return wire.x
  const blade = phases.findIndex((phase) => on?.endsWith(`/${phase}`) === true)
  return blade < 0 ? undefined : blade
}
