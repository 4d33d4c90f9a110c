// The names of the browser and of node do not compile in the engine.

import { join } from 'node:path'
import ts from 'typescript'
import { expect, test } from 'vitest'
import { root } from '../support/sourceTree'

const probePath = join(root, 'src/engine/site/probe.ts')

function errorsInEngine(source: string): string[] {
  const { config } = ts.readConfigFile(join(root, '.ci/engine.tsconfig.json'), ts.sys.readFile)
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, join(root, '.ci'))
  const host = ts.createCompilerHost(options)
  const { getSourceFile, fileExists } = host
  host.fileExists = (path) => path === probePath || fileExists(path)
  host.getSourceFile = (path, language, ...others) =>
    path === probePath ? ts.createSourceFile(path, source, language) : getSourceFile(path, language, ...others)
  const program = ts.createProgram([probePath], options, host)
  return ts.getPreEmitDiagnostics(program).map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, ' '))
}

test('browser and node are unknown', () => {
  const source = 'export const found = [document, process, fetch, setTimeout, console, Buffer, localStorage]'
  const errors = errorsInEngine(source)
  for (const name of ['document', 'process', 'fetch', 'setTimeout', 'console', 'Buffer', 'localStorage']) {
    expect(errors.some((error) => error.includes(`'${name}'`))).toBe(true)
  }
})

test('an index that may miss must be answered for', () => {
  expect(errorsInEngine('export const first = (list: number[]): number => list[0]')).toHaveLength(1)
})

test('plain arithmetic compiles', () => {
  expect(errorsInEngine('export const root = (x: number): number => Math.sqrt(x)')).toEqual([])
})
