/**
 * A circuit as standard SPICE text: one AC analysis at the circuit's frequency, magnitudes rms, node 0 remote earth. It
 * has no operating point of its own (every source is alternating and much of it hangs on capacitances only), which the
 * option line says for the simulators that ask for one. The pivot options of SPICE 3 keep its elimination to large pivots:
 * parts from 0.1 mohm to 1 Gohm meet at one node, and with the usual ones the voltage behind a stick is off by 1e-5.
 */
import { PI, type Circuit, type Element } from '../../engine'
import { partLines, type Writer } from './partLines'
import { spiceNames } from './spiceNames'

export interface NetlistInput {
  /** The first line, then comments below it. */
  readonly title: string
  readonly remarks: readonly string[]
  readonly circuit: Circuit
  /** Hertz. */
  readonly frequency: number
  /** What a part is, in words; by element id. */
  wordsFor(id: string): string
  /** Elements whose current is wanted: each gets an ammeter before it. */
  readonly measured: readonly string[]
}

export interface Netlist {
  readonly text: string
  /** The netlist's name by the circuit's node. */
  readonly nodeNames: ReadonlyMap<string, string>
  /** The netlist's ammeter by measured element. */
  readonly ammeters: ReadonlyMap<string, string>
}

export function netlist(input: NetlistInput): Netlist {
  const names = spiceNames()
  const writer: Writer = { names, omega: 2 * PI * input.frequency }
  const ammeters = new Map<string, string>()
  const parts = input.circuit.elements.flatMap((element) => {
    const meter = input.measured.includes(element.id) ? ammeterBefore(writer, element) : undefined
    if (meter) ammeters.set(element.id, meter.name)
    return [
      `* ${oneLine(input.wordsFor(element.id))}`,
      ...(meter?.lines ?? []),
      ...partLines(writer, element, meter?.behind),
    ]
  })
  const nodes = [...names.nodes]
  const lines = [
    oneLine(input.title),
    ...input.remarks.map((remark) => `* ${oneLine(remark)}`),
    '*',
    ...parts,
    '*',
    ...nodes.map(([name, safe]) => `* ${safe} = ${oneLine(name)}`),
    '*',
    '.options noopac pivrel=0.9 pivtol=1e-25',
    `.ac lin 1 ${input.frequency} ${input.frequency}`,
    ...printLines([...[...ammeters.values()].map((name) => `i(${name})`), ...nodes.map(([, safe]) => `v(${safe})`)]),
    '.end',
  ]
  return { text: `${lines.join('\n')}\n`, nodeNames: names.nodes, ammeters }
}

/** Three quantities a line: a table that fits a page. */
function printLines(quantities: readonly string[]): readonly string[] {
  return Array.from(
    { length: Math.ceil(quantities.length / 3) },
    (_, k) => `.print ac ${quantities.slice(3 * k, 3 * k + 3).join(' ')}`,
  )
}

function ammeterBefore(
  { names }: Writer,
  element: Element,
): { name: string; behind: string; lines: readonly string[] } {
  if (!('from' in element)) throw new Error(`an element with two ends, not ${element.id}`)
  const name = names.part('v', `${element.id} ammeter`)
  const behind = names.inner(`${element.id} a`)
  return { name, behind, lines: [`${name} ${names.node(element.from)} ${behind} dc 0 ac 0`] }
}

/** A comment ends with its line; a lone character beyond ASCII trips some simulators. */
function oneLine(text: string): string {
  return text
    .replaceAll('\u00a0', ' ')
    .replaceAll('Ω', 'ohm')
    .replaceAll('°', ' degrees')
    .replace(/[’‘]/g, "'")
    .replace(/[–—−]/g, '-')
    .replace(/[^\x20-\x7e]+/g, ' ')
}
