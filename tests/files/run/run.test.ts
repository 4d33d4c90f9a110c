/** Runs: written and read back bit for bit, and bad ones refused with all issues. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { actions, type Order, type Value, type ValueSpec } from '../../../src/engine'
import { readRun } from '../../../src/files/run/read'
import type { Run } from '../../../src/files/run/run'
import { writeRun } from '../../../src/files/run/write'
import { marrowBendBase } from '../../support/marrowBend'

const digest = 'a'.repeat(64)
const run = (orders: readonly Order[]): Run => ({
  scenario: 'marrow-bend',
  scenarioDigest: digest,
  pack: 'concrete-rod',
  packDigest: digest,
  engine: 1,
  seed: 1,
  purpose: 'practise',
  startsAt: 'beginning',
  orders,
})
const issuesOf = (text: string) => {
  const read = readRun(text, actions, marrowBendBase())
  return read.ok ? [] : read.issues
}

const figure = fc.double({ min: -1000, max: 1000, noNaN: true }).map((it) => (it === 0 ? 0 : it))
const point = fc.record({ x: figure, y: figure })
const word = fc.stringMatching(/^[a-z]{1,8}(-[a-z]{1,8})?$/)
function valueOf(spec: ValueSpec): fc.Arbitrary<Value> {
  switch (spec.kind) {
    case 'number':
      return figure
    case 'choice':
      return spec.many ? fc.array(word) : word
    case 'point':
      return point
    case 'outline':
      return fc.array(point, { maxLength: 6 })
    case 'text':
      return fc.string({ minLength: 1, maxLength: 80 })
    case 'cards':
      return fc.array(word)
  }
}

const anyOrder = fc.constantFrom(...actions.values()).chain((action) =>
  fc
    .record(
      {
        at: fc.constant(0),
        who: fc.constantFrom('pic', 'pw', 'gw', 'so'),
        with: fc.constantFrom('S-11', 'E-07'),
        on: fc.constantFrom('conductor-b', 'conductor-b@next', 'rod/R-1', 'switch-27/A'),
        values: fc.record(
          Object.fromEntries(Object.entries(action.values ?? {}).map(([name, spec]) => [name, valueOf(spec)])),
          {
            requiredKeys: Object.keys(action.values ?? {}).filter((name) => !action.optional?.includes(name)),
          },
        ),
      },
      { requiredKeys: ['at', 'who', 'values'] },
    )
    .map((rest) => ({ ...rest, do: action.id }) as Order),
)

describe('a run', () => {
  it('reads back as it was written, for every action and its values, and is written to the same bytes', () => {
    fc.assert(
      fc.property(fc.array(anyOrder, { maxLength: 20 }), (orders) => {
        const timed = orders.map((order, i) => ({ ...order, at: i }))
        const text = writeRun(run(timed), actions)
        const read = readRun(text, actions, marrowBendBase())
        expect(read).toEqual({ ok: true, value: run(timed) })
        if (read.ok) expect(writeRun(read.value, actions)).toBe(text)
      }),
      { numRuns: 300 },
    )
  })

  it('keeps what it expects, with the unit in the key', () => {
    const expected: Run = {
      ...run([]),
      expect: {
        outcome: 'fail',
        findings: [['sources-named', 12]],
        exposures: [{ person: 'pw', path: 'hand-thigh', at: 9, zone: 'AC-4.3', current: 1.5 }],
      },
    }
    const text = writeRun(expected, actions)
    expect(text).toContain('"currentA":1.5')
    expect(readRun(text, actions)).toEqual({ ok: true, value: expected })
  })

  it('puts a line to each order, keys sorted, format and version first', () => {
    const text = writeRun(run([{ at: 3, who: 'so', do: 'look', on: 'switch-27/A', values: {} }]), actions)
    expect(text).toContain('\n    {"at":3,"do":"look","on":"switch-27/A","who":"so"}\n')
    expect(text.startsWith('{\n  "format": "earths-on/run",\n  "version": 1,\n')).toBe(true)
  })
})

describe('a bad run', () => {
  const good = JSON.parse(
    writeRun(run([{ at: 3, who: 'so', do: 'look', on: 'switch-27/A', values: {} }]), actions),
  ) as Record<string, unknown>

  it('gives all issues at once', () => {
    const lines = [
      { at: 5, who: 'pw', do: 'look', on: 'pole', note: 'x' },
      { at: 4, who: 'nobody', do: 'fly' },
      { at: 6.5, who: 'pw', do: 'look', on: '../pole' },
      { at: 7, who: 'pw', do: 'clamp', with: 'S-99', on: 'conductor-a', turns: '6' },
      { at: 8, who: 'gw', do: 'drive-rod', with: 'R-1', atPoint: { xM: 1 }, depthCm: 180 },
      null,
    ]
    const issues = issuesOf(JSON.stringify({ ...good, seed: -1, actions: lines }))
    expect(issues.map((it) => it.path).sort()).toEqual([
      '$.actions[0].note',
      '$.actions[1].at',
      '$.actions[1].do',
      '$.actions[1].who',
      '$.actions[2].at',
      '$.actions[2].on',
      '$.actions[3].turns',
      '$.actions[3].with',
      '$.actions[4].atPoint.yM',
      '$.actions[4].depthCm',
      '$.actions[4].depthM',
      '$.actions[5]',
      '$.seed',
    ])
    expect(issues.find((it) => it.path === '$.actions[4].depthCm')?.allowed).toContain('depthM')
  })

  it('is refused when it is of a newer version, another format or another scenario', () => {
    expect(issuesOf(JSON.stringify({ ...good, version: 9 }))[0]).toMatchObject({
      path: '$.version',
      found: 'earths-on/run version 9',
    })
    expect(issuesOf(JSON.stringify({ ...good, format: 'earths-on/scenario' }))[0]?.path).toBe('$.format')
    expect(issuesOf(JSON.stringify({ ...good, scenario: 'elsewhere' }))[0]?.path).toBe('$.scenario')
  })

  it('is refused when it holds reserved keys, twice the same key, 1e400 or too much', () => {
    const text = JSON.stringify(good)
    expect(issuesOf(text.replace('"seed":1', '"seed":1,"seed":2'))[0]?.path).toBe('$.seed')
    expect(issuesOf(text.replace('"seed":1', '"seed":1e400'))[0]?.path).toBe('$.seed')
    expect(issuesOf(text.replace('"who":"so"', '"who":"so","__proto__":{}'))[0]?.path).toBe('$.actions[0].__proto__')
    expect(issuesOf(text.replace('"seed":1', `"seed":${'['.repeat(100_000)}`))[0]?.found).toContain('nested deeper')
  })

  it('never throws, whatever stands in the file', () => {
    fc.assert(
      fc.property(fc.constantFrom(...Object.keys(good)), fc.jsonValue({ maxDepth: 4 }), (key, value) => {
        const read = readRun(JSON.stringify({ ...good, [key]: value }), actions, marrowBendBase())
        if (!read.ok) expect(read.issues.length).toBeGreaterThan(0)
      }),
      { numRuns: 500 },
    )
  })
})
