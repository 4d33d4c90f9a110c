/**
 * `netlist <scenario> <run> --at 12|340s --livening clash-b [--corner declared] [--second 0] [--json]`: the circuit of
 * one instant as SPICE text, everybody in it. Exit 1 when that instant cannot be solved.
 */
import { isUnsolvable, stampInstant } from '../engine'
import { instantNetlist } from '../reports/netlist'
import { say } from '../text'
import { instantOfRun, readSecond, requireCorner, requireLiveningId } from './instantOfRun'
import { readUsage } from './usage'

const usage = 'netlist <scenario> <run> --at 12|340s --livening <id|none> [--corner declared] [--second 0] [--json]'

export function netlist(parameters: readonly string[]): number {
  const { options, places } = readUsage(
    usage,
    parameters,
    {
      json: { type: 'boolean' },
      at: { type: 'string' },
      livening: { type: 'string' },
      corner: { type: 'string' },
      second: { type: 'string' },
    },
    2,
  )
  const { timeline, run, at, moment } = instantOfRun(usage, places, options.at)
  const livening = requireLiveningId(timeline, options.livening)
  const corner = requireCorner(timeline, options.corner)
  const instant = stampInstant(moment, livening, corner, { second: readSecond(options.second) })
  if (isUnsolvable(instant)) {
    console.error(`${livening}: cannot be solved (${instant.node}: ${say(`unsolved.${instant.reason}`)})`)
    return 1
  }
  const { text, nodeNames } = instantNetlist(instant, { scenario: timeline.scenario.id, run, at })
  if (options.json)
    console.log(JSON.stringify({ atS: at, livening, netlist: text, nodes: Object.fromEntries(nodeNames) }))
  else process.stdout.write(text)
  return 0
}
