/**
 * Solves a netlist with ngspice and reads its raw file: complex doubles as they are, no digit lost in printing.
 * The raw file: text head with the variables, `Binary:`, then for each variable real and imaginary part, little endian.
 */
import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

export type Phasor = readonly [re: number, im: number]

/** By the simulator's name, lower case: `v(node)` and `i(source)`. @throws when ngspice is absent or refuses the text */
export function solveBySimulator(text: string): ReadonlyMap<string, Phasor> {
  const folder = mkdtempSync(join(tmpdir(), 'netlist-'))
  try {
    const circuit = join(folder, 'instant.cir')
    const raw = join(folder, 'instant.raw')
    writeFileSync(circuit, text)
    const said = execFileSync('ngspice', ['-b', '-r', raw, circuit], { encoding: 'utf8', stdio: 'pipe' })
    if (/error|singular/i.test(said)) throw new Error(said)
    return readRaw(readFileSync(raw))
  } finally {
    rmSync(folder, { recursive: true })
  }
}

export function simulatorVersion(): string {
  return /ngspice-[\w.+-]+/.exec(execFileSync('ngspice', ['--version'], { encoding: 'utf8' }))?.[0] ?? 'ngspice'
}

function readRaw(raw: Buffer): ReadonlyMap<string, Phasor> {
  const mark = 'Binary:\n'
  const start = raw.indexOf(mark)
  const head = raw.subarray(0, start).toString('latin1')
  if (start < 0 || !/Flags: complex/.test(head)) throw new Error('no complex raw file')
  const names = [...head.matchAll(/^\t\d+\t(\S+)\t/gm)].map((found) => found[1]!.toLowerCase())
  const values = raw.subarray(start + mark.length)
  if (values.length !== 16 * names.length) throw new Error(`${names.length} variables in ${values.length} bytes`)
  return new Map(names.map((name, k) => [name, [values.readDoubleLE(16 * k), values.readDoubleLE(16 * k + 8)]]))
}
