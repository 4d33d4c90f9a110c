/** What a part of the circuit is, in a line worker's words, by the id that the engine gives it. */
import { say, type WordKey } from '../../text'

/** Longer ids first where one begins like another. Named groups fill the words' places. */
const parts: readonly (readonly [RegExp, WordKey])[] = [
  [/^lv\/emf-(?<phase>\w)$/, 'netlist.lv-source'],
  [/^beside\/(?<circuit>[^/]+)\/emf-(?<phase>\w)$/, 'netlist.beside-emf'],
  [/^beside\/(?<circuit>[^/]+)\/from-(?<phase>\w)$/, 'netlist.beside-from'],
  [/^beside\/(?<circuit>[^/]+)\/load-(?<phase>\w)$/, 'netlist.beside-load'],
  [/^beside\/(?<circuit>[^/]+)\/fault-(?<phase>\w)$/, 'netlist.beside-fault'],
  [/^own\/(?<source>[^/]+)\/emf-(?<phase>\w)$/, 'netlist.own-emf'],
  [/^(?<source>[^/]+)\/output-(?<phase>\w)$/, 'netlist.own-output'],
  [/^(?<transformer>[^/]+)\/windings$/, 'netlist.windings'],
  [/^(?<transformer>[^/]+)\/carrier-(?<phase>\w)$/, 'netlist.carrier'],
  [/^(?<transformer>[^/]+)\/switch-(?<phase>\w)$/, 'netlist.main-switch'],
  [/^(?<transformer>[^/]+)\/stray-(?<phase>\w)$/, 'netlist.terminal-stray'],
  [/^(?<transformer>[^/]+)\/neutral-earth$/, 'netlist.star-earth'],
  [/^(?<transformer>[^/]+)\/high-earth$/, 'netlist.high-earth'],
  [/^(?<neutral>lv\/neutral-\d+|[^/]+\/low-star)\/earth$/, 'netlist.house-earth'],
  [/^(?<neutral>lv\/neutral-\d+|[^/]+\/low-star)\/beyond$/, 'netlist.house-beyond'],
  [/^(?<neutral>lv\/neutral-\d+)\/wire$/, 'netlist.house-wire'],
  [/^(?<wire>[^/]+)\/lamps$/, 'netlist.lamps'],
  [/^touch\/(?<item>[^/]+)\/(?<wire>.+)$/, 'netlist.touch'],
  [/^(?<feeder>[^/]+)\/emf-(?<phase>\w)$/, 'netlist.emf'],
  [/^(?<feeder>[^/]+)\/source-(?<phase>\w)$/, 'netlist.source'],
  [/^(?<feeder>[^/]+)\/neutral$/, 'netlist.neutral'],
  [/^(?<feeder>[^/]+)\/coil-losses$/, 'netlist.coil-losses'],
  [/^(?<feeder>[^/]+)\/network$/, 'netlist.network'],
  [/^(?<feeder>[^/]+)\/neutral-wire$/, 'netlist.neutral-wire'],
  [/^(?<feeder>[^/]+)\/fault-(?<phase>\w)$/, 'netlist.neutral-fault'],
  [/^(?<feeder>[^/]+)\/station-earth$/, 'netlist.station-earth'],
  [/^(?<feeder>[^/]+)\/line$/, 'netlist.feeder-line'],
  [/^(?<feeder>[^/]+)\/shunt-bus$/, 'netlist.shunt-bus'],
  [/^(?<feeder>[^/]+)\/shunt-end$/, 'netlist.shunt-end'],
  [/^section\/shunt-(?<place>.+)$/, 'netlist.section-shunt'],
  [/^section\/(?<piece>.+)$/, 'netlist.section'],
  [/^(?<at>[^/]+)\/blade-(?<phase>\w)$/, 'netlist.blade'],
  [/^(?<at>[^/]+)\/earth-lead-(?<phase>\w)$/, 'netlist.isolation-lead'],
  [/^(?<wire>[^/]+)\/earth-(?<place>.+)$/, 'netlist.neutral-earth'],
  [/^(?<at>[^/]+)\/earth$/, 'netlist.isolation-earth'],
  [/^clash-(?<phase>\w)$/, 'netlist.clash'],
  [/^piece\/(?<item>[^/]+)\/(?<ends>.+)$/, 'netlist.piece'],
  [/^clamp\/(?<item>[^/]+)\/(?<end>.+)$/, 'netlist.clamp'],
  [/^pole\/arm-bolt$/, 'netlist.arm-bolt'],
  [/^stay\/fixing$/, 'netlist.stay-fixing'],
  [/^stay\/insulator$/, 'netlist.stay-insulator'],
  [/^(?<wire>[^/]+)\/insulator$/, 'netlist.lv-insulator'],
  [/^(?<wire>[^/]+)\/wire$/, 'netlist.lv-wire'],
  [/^electrodes$/, 'netlist.soil'],
  [/^body\/(?<who>[^/]+)\/bolt (?<height>[\d.]+) to steel$/, 'netlist.step-bolt'],
  [/^body\/(?<who>[^/]+)\/stick (?<item>\S+) on .+ leaks$/, 'netlist.stick'],
  [/^stray\/(?<item>.+)$/, 'netlist.stray'],
  [/^body\/(?<who>[^/]+)\/(?<limb>[^/]+)\/surface$/, 'netlist.surface'],
  [/^body\/(?<who>[^/]+)\/(?<limb>[^/]+)\/limb$/, 'netlist.limb'],
  [/^body\/(?<who>[^/]+)\/(?<limb>[^/]+)\/skin$/, 'netlist.skin'],
  [/^body\/(?<who>[^/]+)\/(?<limb>[^/]+)\/(?<item>.+)$/, 'netlist.layer'],
]

export function describePart(id: string): string {
  for (const [pattern, key] of parts) {
    const groups = pattern.exec(id)?.groups
    if (groups === undefined && !pattern.test(id)) continue
    return sayWith(key, groups ?? {})
  }
  return id
}

/** The key is one of many, so its places cannot be checked by type: describePart.test.ts does. */
function sayWith(key: WordKey, values: Readonly<Record<string, string>>): string {
  return (say as (key: WordKey, values: Readonly<Record<string, string>>) => string)(key, values)
}
