/**
 * Writes what ngspice answers for every instant of tests/support/netlistInstants.ts: node voltages and body currents, the
 * digest of the netlist it was given, its version. Run by hand where ngspice is installed (Debian: apt-get install
 * ngspice), after any change that the digests in tests/reports/netlist show:
 *
 *   npx tsx tests/reference/netlist/makeReference.ts
 *
 * Then read the difference: a voltage that moved is a change of the model, and needs a reason.
 */
import { createHash } from 'node:crypto'
import { readdirSync, rmSync, writeFileSync } from 'node:fs'
import { instantCases, solveCase } from '../../support/netlistInstants'
import { simulatorVersion, solveBySimulator, type Phasor } from './solveBySimulator'

const folder = new URL('.', import.meta.url)
for (const name of readdirSync(folder)) if (name.endsWith('.json')) rmSync(new URL(name, folder))

for (const one of instantCases) {
  const { written } = solveCase(one)
  const answers = solveBySimulator(written.text)
  const answerTo = (quantity: string): Phasor => {
    const found = answers.get(quantity)
    if (found === undefined) throw new Error(`${one.id}: no ${quantity} in the raw file`)
    return found
  }
  const reference = {
    simulator: simulatorVersion(),
    netlistSha256: createHash('sha256').update(written.text).digest('hex'),
    voltageV: Object.fromEntries([...written.nodeNames].map(([node, name]) => [node, answerTo(`v(${name})`)])),
    currentA: Object.fromEntries([...written.ammeters].map(([part, name]) => [part, answerTo(`i(${name})`)])),
  }
  writeFileSync(new URL(`${one.id}.json`, folder), `${linePerPhasor(JSON.stringify(reference, null, 1))}\n`)
}

/** A phasor on one line. */
function linePerPhasor(text: string): string {
  return text.replace(/\[\s+(\S+),\s+(\S+)\s+\]/g, '[$1, $2]')
}
