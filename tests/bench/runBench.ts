/**
 * `npm run bench [-- --scene]`: how long the engine takes here, as a table beside what was asked for. It is no test: no
 * figure fails anything, because the figures are the machine's as much as ours.
 */
import { readFileSync } from 'node:fs'
import { cpus, loadavg, totalmem } from 'node:os'
import { engineVersion } from '../../src/engine'
import type { Row } from './measure'
import { peerRows } from './peerRows'
import { runRows } from './runRows'
import { siteRows } from './siteRows'
import { soilRows } from './soilRows'

function versionOf(name: string): string {
  const file = new URL(`../../node_modules/${name}/package.json`, import.meta.url)
  return (JSON.parse(readFileSync(file, 'utf8')) as { readonly version: string }).version
}

function machine(): readonly string[] {
  const [first] = cpus()
  const memory = Math.round(totalmem() / 2 ** 30)
  return [
    `machine    ${first?.model ?? 'unknown'}, ${cpus().length} cores, ${memory} GiB, ${process.platform} ${process.arch}`,
    `load       ${loadavg()[0]!.toFixed(1)} before the start; above the number of cores nothing below means much`,
    `node       ${process.versions.node} (V8 ${process.versions.v8})`,
    `engine     ${engineVersion}`,
    `libraries  mathjs ${versionOf('mathjs')}, ml-matrix ${versionOf('ml-matrix')}, three ${versionOf('three')}`,
  ]
}

function figure(value: number): string {
  return value >= 100 ? value.toFixed(0) : value.toPrecision(3)
}

function line({ name, unit, measured, best, target, note }: Row): string {
  const asked = target === null ? '' : `${unit === 'ms' ? '≤' : '≥'} ${target} ${unit}`
  const holds = target === null || (unit === 'ms' ? measured <= target : measured >= target)
  const size = `${figure(measured)} ${unit}`
  const fastest = `${figure(best)} ${unit}`
  return `${name.padEnd(42)} ${size.padStart(11)} ${fastest.padStart(11)}  ${asked.padEnd(9)} ${holds ? '   ' : 'no '} ${note}`
}

async function main(): Promise<void> {
  for (const it of machine()) console.log(it)
  console.log(`\n${' '.repeat(42)} ${'median'.padStart(11)} ${'fastest'.padStart(11)}  asked for\n`)
  for (const rows of [peerRows, soilRows, siteRows, runRows]) for (const row of rows()) console.log(line(row))
  if (process.argv.includes('--scene')) {
    const { frameRow } = await import('./frameRow')
    console.log(line(await frameRow()))
  }
}

await main()
