/**
 * `ground <scenario> <run> --at 12|340s --livening clash-b [--corner declared] [--second 0] [--line -15,0,15,0]
 * [--grid -10,-10,10,10] [--step 0.25] [--json|--csv]`: electrodes, their matrix, currents and safe distances, what the
 * barrier encloses, and the surface along a line (through the pole when not said) or over a rectangle. Exit 1 when that
 * instant cannot be solved.
 */
import { groundHazard, isUnsolvable, stampInstant, type GroundPoint, type Unsolvable } from '../engine'
import { alongLine, groundReport, overRectangle, surfaceCsv, type GroundReport, type Stretch } from '../reports/ground'
import { amperes, metres, ohms, say, seconds, volts } from '../text'
import { UnusableInput } from './input'
import { instantOfRun, readSecond, requireCorner, requireLiveningId } from './instantOfRun'
import { readUsage } from './usage'

const usage =
  'ground <scenario> <run> --at 12|340s --livening <id|none> [--corner declared] [--second 0] [--line x,y,x,y | --grid x,y,x,y] [--step 0.25] [--json | --csv]'

/** More places than a map on any screen. */
const mostPlaces = 1_000_000

export function ground(parameters: readonly string[]): number {
  const { options, places } = readUsage(
    usage,
    parameters,
    {
      json: { type: 'boolean' },
      csv: { type: 'boolean' },
      at: { type: 'string' },
      livening: { type: 'string' },
      corner: { type: 'string' },
      second: { type: 'string' },
      line: { type: 'string' },
      grid: { type: 'string' },
      step: { type: 'string' },
    },
    2,
  )
  const { timeline, moment } = instantOfRun(usage, places, options.at)
  const livening = requireLiveningId(timeline, options.livening)
  const corner = requireCorner(timeline, options.corner)
  const surface = surfaceOf(options)
  const second = readSecond(options.second)
  const instant = stampInstant(moment, livening, corner, { second, persons: [] })
  if (isUnsolvable(instant)) return sayUnsolved(livening, instant)
  const hazard = groundHazard(moment, livening, corner, { second })
  if (isUnsolvable(hazard)) return sayUnsolved(livening, hazard)
  const report = groundReport(instant, hazard, surface)
  if (options.json) console.log(JSON.stringify(report))
  else if (options.csv) process.stdout.write(surfaceCsv(report))
  else for (const line of linesOf(report)) console.log(line)
  return 0
}

function sayUnsolved(livening: string, { node, reason }: Unsolvable): number {
  console.error(`${livening}: cannot be solved (${node}: ${say(`unsolved.${reason}`)})`)
  return 1
}

interface SurfaceOptions {
  readonly line?: string | undefined
  readonly grid?: string | undefined
  readonly step?: string | undefined
}

/** @throws UnusableInput */
function surfaceOf({ line, grid, step: stepText = '0.25' }: SurfaceOptions): readonly GroundPoint[] {
  const step = Number(stepText)
  if (!(step >= 0.01 && step <= 1000)) throw new UnusableInput([`--step: found ${stepText}; allowed: 0.01 to 1000 m`])
  if (grid === undefined) return placesOf('--line', line ?? '-15,0,15,0', step, 1, alongLine)
  if (line !== undefined) throw new UnusableInput([`--line and --grid: found both; allowed: one of them`])
  return placesOf('--grid', grid, step, 2, overRectangle)
}

function placesOf(
  option: string,
  text: string,
  step: number,
  directions: 1 | 2,
  make: (stretch: Stretch) => readonly GroundPoint[],
): readonly GroundPoint[] {
  const numbers = text.split(',').map((part) => (part.trim() === '' ? Number.NaN : Number(part)))
  const [x = 0, y = 0, toX = 0, toY = 0] = numbers
  const isUsable = numbers.length === 4 && numbers.every((it) => Math.abs(it) <= 10_000)
  if (!isUsable) throw new UnusableInput([`${option}: found ${text}; allowed: x,y,x,y in metres, 10000 at most`])
  const columns = Math.abs(toX - x) / step + 1
  const rows = Math.abs(toY - y) / step + 1
  const count = directions === 2 ? columns * rows : columns + rows
  if (count > mostPlaces) {
    throw new UnusableInput([`${option}: found about ${Math.round(count)} places; allowed: ${mostPlaces}`])
  }
  return make({ from: { x, y }, to: { x: toX, y: toY }, step })
}

function linesOf(report: GroundReport): readonly string[] {
  const { electrodes, mutualOhm, surface, touches } = report
  return [
    ...electrodes.map(
      (it, i) =>
        `${it.id} at ${metres(it.xM)}, ${metres(it.yM)}: ${volts(it.voltageV)}, ${amperes(it.currentA)}; ohm ${mutualOhm[i]!.map(ohms).join(', ')}; a pace too high as far as ${metres(it.safeDistanceM)}`,
    ),
    ...barrierLines(report),
    ...touches.map(
      (it) =>
        `a hand on ${it.id}: ${volts(it.touchV)} of its ${volts(it.voltageV)}, ${it.isTolerable ? 'tolerable' : 'too high'}`,
    ),
    ...surface.map((it) => `${metres(it.xM)}, ${metres(it.yM)}: ${volts(it.voltageV)}`),
  ]
}

function barrierLines({ tolerable, tolerableContour, barrier }: GroundReport): readonly string[] {
  const time = tolerable.durationS === 'uncleared' ? 'nothing cleared it' : seconds(tolerable.durationS)
  const limit = `tolerable: ${volts(tolerable.stepV)} on a pace, ${volts(tolerable.touchV)} on a hand; ${time}`
  if (barrier.worstPace === null) return [limit, 'no barrier']
  const worst = `worst pace along it ${volts(barrier.worstPace.voltageV)}`
  if (barrier.isEnclosing) {
    return [limit, `the barrier encloses every place where a pace is too high (${tolerableContour.length}); ${worst}`]
  }
  const [first] = barrier.sticksOut
  const place = first ? `${metres(first.xM)}, ${metres(first.yM)}` : ''
  return [
    limit,
    `outside the barrier a pace is too high at ${barrier.sticksOut.length} places, as at ${place}; ${worst}`,
  ]
}
