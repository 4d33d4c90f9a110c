/**
 * Which hand-solved case exercises each mechanism of livening and each exposure path: a kind or a path without one does not
 * compile or fails here, and so does a case that is no longer there. Every row of the procedure's tables has its answer.
 */
import { describe, expect, it } from 'vitest'
import { mechanisms } from '../../../src/engine/hazard/circuit/livening'
import { exposurePaths } from '../../../src/engine/hazard/paths'
import type { LiveningKind } from '../../../src/engine/site/livening'
import { hasTest } from '../../support/hasTest'

/** File beside this one, and the beginning of the case's name. */
type Case = readonly [file: string, name: string]

const mechanismCases: Readonly<Record<LiveningKind, Case>> = {
  clash: ['facts', '90 % at a 6 Ω neutral, 56 % at 60 Ω'],
  'clash-two': ['facts', 'two phases fallen onto a complete set do not sum to zero either'],
  'switch-closed': ['facts', 'a complete set is balanced'],
  'fuse-carrier': ['protection/fuses', 'one phase through its fuse until that has blown'],
  induction: ['parallel', '100 A back through the ground: E = Zm I L'],
  'pick-up': ['parallel', 'displaced by an earth fault of that network its phases stand at 0, √3 and √3'],
  'neutral-raised': ['neutralWire', 'by tens to a thousand volts, until that feeder trips'],
  'coil-fed': ['neutralEarthing', 'the site rises to current times rod, hundreds of volts, and nothing clears it'],
  'back-feed': ['backFeed', 'cannot hold it up once there are earths between phases: 0.262 A'],
  'low-voltage-fed': ['bondedWires', 'an inverter alone on the wires holds them at 230 V'],
  'street-lamps-on': ['lowVoltage', 'by day the wire hangs on its lamps at nothing'],
  'lead-on-low-voltage': ['lowVoltage', 'while it is hoisted: lead and rod at 230 V over rod and neutral earth'],
  'blade-shut': ['mechanisms', 'D3 one blade falls shut'],
  'remote-close': ['mechanisms', 'D17 from afar'],
  'other-crew-closes': ['mechanisms', 'D18 another crew'],
  'conductor-falls': ['mechanisms', 'D6 a 33 kV phase onto another phase'],
  'jumper-back': ['mechanisms', 'D7 a jumper swings back'],
  'conductor-down': ['mechanisms', 'D21 a conductor on the ground over 1 kΩ'],
  'neighbour-fault': ['mechanisms', 'D26 a flashover on the next pole'],
  'boom-touches': ['mechanisms', 'D22 the boom touches a live phase'],
  'handle-live': ['mechanisms', 'D1 an insulator breaks as a switch is worked'],
  lightning: ['mechanisms', 'D15, D27 $kind: cannot be computed'],
  'stored-charge': ['mechanisms', 'D27 a bank of 3 × 10 µF at 11 kV'],
}

const pathCases: Readonly<Record<string, Case>> = {
  'hand-hand': ['facts', 'one phase left off: full voltage beside the worker'],
  'phase-neutral': ['paths', 'between the line and its neutral, covered'],
  'hand-feet': ['paths', 'barefoot on one bolt, a hand on the line'],
  'thigh-feet': ['bodies', 'one hand in, thigh and foot out: in proportion'],
  'hand-thigh': ['bodies', 'hand to thigh is one limb: half of ZT'],
  'hand-metalwork': ['facts', 'hand to hand between B and the arm is almost nothing'],
  'low-voltage': ['place', 'with no event: 230 V between a live wire and an earthed conductor'],
  'across-gap': ['place', 'has phase voltage across the gap while its earths are on the other side'],
  stick: ['paths', 'a stick with a wet core, 500 kΩ, in both hands'],
  'hand-bucket': ['place', 'a sound boom and liner: 5.7 kV over 60 MΩ'],
  'leg-leg': ['poles', 'leg to leg is a path of its own'],
  'hand-pole-feet': ['paths', 'a hand on the foot of the pole'],
  'hand-lead-feet': ['facts', 'a hand on the lead: class 0 may fail at 3.7 kV'],
  'hand-truck-feet': ['place', 'beside the rod it floats at what the ground under its pads has'],
  pace: ['bodies', 'a pace by hand: prospective voltage over two discs of ρ/4b'],
  'handline-feet': ['place', 'wet, from the raised arm to the hands'],
  'handle-feet': ['mechanisms', 'D1 an insulator breaks as a switch is worked'],
  'bystander-pace': ['bystander', 'is taken down the steepest line, by hand V(r) - V(r + 1)'],
  'bystander-touch': ['bystander', 'hand to both feet: 0.75 of the body and two feet in parallel'],
  'hand-fence-feet': ['place', 'a fence floats at the mean of its posts'],
  rescuer: ['place', 'the whole circuit with both stamped into it gives the same currents'],
  'livestock-pace': ['place', 'has more between its feet than people have'],
  'arc-flash': ['paths', 'arc flash and a thrown lead are told in words'],
}

/** Events that are no kind of livening: a state of the site, or what follows of itself once the line is alive. */
const otherEvents: Readonly<Record<number, Case>> = {
  2: ['sweep', 'a hung blade needs no event'],
  16: ['story', 'recloses after its dead time unless that is blocked'],
  23: ['leadWear', 'a loose clamp lets go in the first half period at 7 kA'],
  24: ['leadWear', 'D24 a lead that burns open'],
  28: ['lowVoltage', 'needs no event: the supply as it is set has the worker on a live conductor'],
}

const isThere = ([file, name]: Case): boolean => hasTest(import.meta.dirname, file, name)

describe('mechanisms', () => {
  it.each(Object.entries(mechanismCases))('%s', (kind, found) => {
    expect(Object.keys(mechanisms)).toContain(kind)
    expect(isThere(found), found.join(': ')).toBe(true)
  })

  it('every event of the procedure is one of them, or comes without an event', () => {
    const rows = Object.values(mechanisms).flatMap((it) => it.rows)
    const missing = Array.from({ length: 28 }, (_, i) => i + 1).filter((row) => !rows.includes(row))
    expect(missing).toEqual(Object.keys(otherEvents).map(Number))
    for (const found of Object.values(otherEvents)) expect(isThere(found), found.join(': ')).toBe(true)
  })
})

describe('exposure paths', () => {
  it('each has its case', () => {
    expect(Object.keys(pathCases).sort()).toEqual(exposurePaths.map((it) => it.id).sort())
  })

  it.each(Object.entries(pathCases))('%s', (_, found) => {
    expect(isThere(found), found.join(': ')).toBe(true)
  })

  it('every row of the procedure is on one of them', () => {
    const rows = exposurePaths.flatMap((it) => it.rows)
    expect([...new Set(rows)].sort((a, b) => a - b)).toEqual(Array.from({ length: 22 }, (_, i) => i + 1))
  })
})
