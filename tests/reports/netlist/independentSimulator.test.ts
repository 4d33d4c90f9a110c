/**
 * The circuit of an instant against an independent simulator: ngspice (Debian's package; version in each file) solved the
 * same netlists, and its answers are kept in tests/reference/netlist. Where a digest differs, the netlist is not the one
 * that was solved: run `npx tsx tests/reference/netlist/makeReference.ts` where ngspice is installed.
 *
 * Tolerance: 1e-6 of the value, or 1e-9 V and 1e-12 A, where a circuit fed with kilovolts has no digit left.
 */
import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { factor, isUnsolvable, type StampedInstant } from '../../../src/engine'
import { instantCases, solveCase } from '../../support/netlistInstants'

type Phasor = readonly [re: number, im: number]

interface Reference {
  readonly netlistSha256: string
  readonly voltageV: Readonly<Record<string, Phasor>>
  readonly currentA: Readonly<Record<string, Phasor>>
}

const folder = new URL('../../reference/netlist/', import.meta.url)

function reference(id: string): Reference {
  return JSON.parse(readFileSync(new URL(`${id}.json`, folder), 'utf8')) as Reference
}

function solved(instant: StampedInstant) {
  const factored = factor(instant.circuit)
  if (isUnsolvable(factored)) throw new Error(`${factored.reason} at ${factored.node}`)
  const solution = factored.solve()
  if (isUnsolvable(solution)) throw new Error(`${solution.reason} at ${solution.node}`)
  return { nodes: factored.nodes, solution }
}

/** How far two phasors are apart, 1 on the edge of the tolerance. */
function apart(own: { re: number; im: number }, [re, im]: Phasor, relative: number, absolute: number): number {
  return Math.hypot(own.re - re, own.im - im) / (relative * Math.hypot(re, im) + absolute)
}

test('each instant has its reference, and no reference is left over', () => {
  const files = readdirSync(folder).filter((name) => name.endsWith('.json'))
  expect(files.sort()).toEqual(instantCases.map((it) => `${it.id}.json`).sort())
})

describe.each(instantCases.map((it) => [it.id, it] as const))('%s', (id, it) => {
  const known = reference(id)

  test('the netlist is the one that was solved', () => {
    const digest = createHash('sha256').update(solveCase(it).written.text).digest('hex')
    expect(digest, 'run npx tsx tests/reference/netlist/makeReference.ts').toBe(known.netlistSha256)
  })

  test('every node voltage', () => {
    const { nodes, solution } = solved(solveCase(it).instant)
    expect(Object.keys(known.voltageV).sort()).toEqual([...nodes])
    const worst = nodes
      .map((node) => ({ node, apart: apart(solution.voltage(node), known.voltageV[node]!, 1e-6, 1e-9) }))
      .reduce((most, one) => (one.apart > most.apart ? one : most))
    expect(worst.apart, worst.node).toBeLessThan(1)
    // not a comparison of zeros
    expect(Math.max(...Object.values(known.voltageV).map(([re, im]) => Math.hypot(re, im)))).toBeGreaterThan(100)
  })

  test('every current into every body', () => {
    const { instant } = solveCase(it)
    const { solution } = solved(instant)
    const parts = instant.bodies.flatMap((body) => body.contacts.map((contact) => contact.element))
    expect(Object.keys(known.currentA).sort()).toEqual([...parts].sort())
    for (const part of parts) {
      expect(apart(solution.current(part), known.currentA[part]!, 1e-6, 1e-12), part).toBeLessThan(1)
    }
    // not a comparison of zeros: somebody feels it, or his layers keep it below a tenth of a milliampere
    expect(Math.max(...Object.values(known.currentA).map(([re, im]) => Math.hypot(re, im)))).toBeGreaterThan(1e-6)
  })

  test('a person alone in it gets what the port model gives', () => {
    const { bodies } = solveCase(it).instant
    expect(bodies.length).toBeGreaterThan(0)
    for (const { person } of bodies) {
      const { instant } = solveCase(it, [person])
      const { solution } = solved(instant)
      for (const { element, current } of instant.bodies[0]!.contacts) {
        const full = solution.current(element)
        expect(apart(current, [full.re, full.im], 1e-6, 1e-12), element).toBeLessThan(1)
      }
    }
  })
})
