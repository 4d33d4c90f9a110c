// Every name that the engine hands out, types included. A new or a lost one is a decision: read the difference, then
// accept it with `npx vitest run tests/architecture -u`. Under CI a difference fails.

import { join } from 'node:path'
import ts from 'typescript'
import { expect, test } from 'vitest'
import { root } from '../support/sourceTree'

function exportedNames(path: string): string[] {
  const { config } = ts.readConfigFile(join(root, 'tsconfig.json'), ts.sys.readFile)
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root)
  const program = ts.createProgram([path], { ...options, types: [] })
  const checker = program.getTypeChecker()
  const source = program.getSourceFile(path)
  const door = source && checker.getSymbolAtLocation(source)
  if (!door) throw new Error(`${path} exports nothing`)
  return checker.getExportsOfModule(door).map((symbol) => {
    const isAlias = (symbol.flags & ts.SymbolFlags.Alias) !== 0
    const { flags } = isAlias ? checker.getAliasedSymbol(symbol) : symbol
    return (flags & ts.SymbolFlags.Value) === 0 ? `type ${symbol.name}` : symbol.name
  })
}

test('the engine hands out exactly these names', async () => {
  const names = exportedNames(join(root, 'src/engine/index.ts')).sort((a, b) => (a < b ? -1 : 1))
  expect(names.length).toBeGreaterThan(10)
  await expect(`${names.join('\n')}\n`).toMatchFileSnapshot('./engineDoor.txt')
})
