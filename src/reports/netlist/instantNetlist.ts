/** The circuit of one instant with everybody in it as a netlist, with what a reader of the file needs to know above it. */
import type { StampedInstant } from '../../engine'
import { say } from '../../text'
import { describePart } from './describePart'
import { netlist, type Netlist } from './netlist'

export interface InstantHead {
  readonly scenario: string
  readonly run: string
  /** Job second. */
  readonly at: number
}

export function instantNetlist(instant: StampedInstant, { scenario, run, at }: InstantHead): Netlist {
  const { livening, corner, from, to, frequency, circuit, bodies } = instant
  return netlist({
    title: say('netlist.title', { scenario, at: String(at), livening }),
    remarks: [
      say('app.caution'),
      say('netlist.run', { run, corner, from: String(from), to: String(to) }),
      say('netlist.rms', { frequency: String(frequency) }),
      bodies.length === 0 ? say('netlist.nobody') : say('netlist.bodies'),
      ...bodies.flatMap(({ person, voltage, limb, failed }) => [
        say('netlist.body', { who: person, voltage: String(voltage), limb: String(limb) }),
        ...(failed.length === 0 ? [] : [say('netlist.failed', { who: person, layers: failed.join(', ') })]),
      ]),
    ],
    circuit,
    frequency,
    wordsFor: describePart,
    measured: bodies.flatMap((body) => body.contacts.map((contact) => contact.element)),
  })
}
