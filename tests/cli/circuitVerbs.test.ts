/** `netlist` and `ground`: one instant of a recorded run to a document, or a refusal that says why. */
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { answerOfVerb } from '../support/answerOfVerb'

const scenario = fileURLToPath(new URL('../../scenarios/marrow-bend', import.meta.url))
const run = [scenario, join(scenario, 'runs/clean.json')]

const corner = ['--corner', 'concrete-low fixing-high soil-low']

describe('netlist', () => {
  it('writes the circuit of one instant in one corner', async () => {
    const { code, out, err } = await answerOfVerb('netlist', ...run, '--at', '40', '--livening', 'clash-b', ...corner)
    expect(err).toBe('')
    expect(code).toBe(0)
    const lines = out.trimEnd().split('\n')
    expect(lines[0]).toMatch(/^Circuit of marrow-bend at job second \d+, livening clash-b$/)
    expect(lines.find((line) => line.includes('clean.json'))).toContain('concrete-low fixing-high soil-low')
    expect(lines.filter((line) => line.startsWith('.ac'))).toEqual(['.ac lin 1 50 50'])
    expect(lines.at(-1)).toBe('.end')
  })

  it.each([
    ['--livening', ['--at', '40', '--livening', 'clash-z']],
    ['--livening', ['--at', '40']],
    ['--at', ['--at', '4000', '--livening', 'none']],
    ['--at', ['--livening', 'none']],
    ['--corner', ['--at', '40', '--livening', 'none', '--corner', 'wet']],
    ['--second', ['--at', '40', '--livening', 'none', '--second', 'soon']],
  ])('refuses %s of %j and writes nothing', async (option, parameters) => {
    const { code, out, err } = await answerOfVerb('netlist', ...run, ...parameters)
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err).toContain(`${option}: found`)
  })
})

describe('ground', () => {
  const at = ['--at', '40', '--livening', 'clash-b'] as const

  it('hands out electrodes, matrix and surface as one value', async () => {
    const { code, out } = await answerOfVerb('ground', ...run, ...at, '--line=-2,0,2,0', '--step', '1', '--json')
    expect(code).toBe(0)
    const report = JSON.parse(out) as { electrodes: unknown[]; mutualOhm: unknown[][]; surface: { xM: number }[] }
    expect(report.electrodes.length).toBeGreaterThanOrEqual(3)
    expect(report.mutualOhm.map((row) => row.length)).toEqual(report.electrodes.map(() => report.electrodes.length))
    expect(report.surface.map((it) => it.xM)).toEqual([-2, -1, 0, 1, 2])
  })

  it('hands out a rectangle of the surface as a table', async () => {
    const { code, out } = await answerOfVerb('ground', ...run, ...at, '--grid=0,0,1,1', '--step', '0.5', '--csv')
    expect(code).toBe(0)
    expect(out.split('\n').filter((line) => line !== '')).toHaveLength(1 + 9)
  })

  it.each([
    ['--grid', ['--grid=0,0,1']],
    ['--grid', ['--grid=0,0,900,900', '--step', '0.1']],
    ['--line', ['--line=0,0,x,1']],
    ['--step', ['--step', '0']],
    ['--line and --grid', ['--line=0,0,1,1', '--grid=0,0,1,1']],
  ])('refuses %s of %j and writes nothing', async (option, parameters) => {
    const { code, out, err } = await answerOfVerb('ground', ...run, ...at, ...parameters)
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err).toContain(`${option}: found`)
  })
})
