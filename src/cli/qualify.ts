/**
 * `qualify [--json] [file or folder…]`: runs physics check cases; without places those of the project. `-` is standard
 * input.
 * Exit 0 when all pass, 1 when any failed, 2 when a file cannot be used (then nothing is run).
 */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { readQualification } from '../files/qualification/readQualification'
import {
  qualificationLines,
  qualifyCase,
  type FindScenarioText,
  type QualificationCase,
} from '../reports/qualification'

const projectCases = fileURLToPath(new URL('../../tests/qualification', import.meta.url))
const scenarios = fileURLToPath(new URL('../../scenarios', import.meta.url))

const findScenarioText: FindScenarioText = (place) => {
  const file = join(scenarios, place)
  return existsSync(file) ? readFileSync(file, 'utf8') : undefined
}

export function qualify(parameters: readonly string[]): number {
  const places = parameters.filter((parameter) => parameter === '-' || !parameter.startsWith('-'))
  const unknown = parameters.filter((parameter) => !places.includes(parameter) && parameter !== '--json')
  if (unknown.length > 0) return refuse([`qualify takes files, folders and --json, not ${unknown.join(' ')}`])
  const { cases, issues } = readAll(places.length === 0 ? [projectCases] : places)
  if (issues.length > 0) return refuse(issues)
  const results = cases.map((item) => qualifyCase(item, findScenarioText))
  const isPassed = results.every(({ passed }) => passed)
  const lines = parameters.includes('--json') ? [JSON.stringify(results)] : qualificationLines(results)
  for (const line of lines) console.log(line)
  return isPassed ? 0 : 1
}

function refuse(issues: readonly string[]): number {
  for (const issue of issues) console.error(issue)
  return 2
}

function readAll(places: readonly string[]): { cases: QualificationCase[]; issues: string[] } {
  const cases: QualificationCase[] = []
  const issues: string[] = []
  for (const place of places) {
    try {
      for (const file of filesIn(place)) {
        const read = readQualification(readFileSync(file === '-' ? 0 : file, 'utf8'))
        if (read.ok) cases.push(...read.value.cases)
        else
          issues.push(
            ...read.issues.map(({ path, found, allowed }) => `${file}: ${path}: found ${found}; allowed: ${allowed}`),
          )
      }
    } catch (error) {
      issues.push(`${place}: ${error instanceof Error ? error.message : String(error)}`)
    }
  }
  return { cases, issues }
}

/** The .json files of a folder and its folders, sorted; a file stands for itself. */
function filesIn(place: string): readonly string[] {
  if (place === '-' || !statSync(place).isDirectory()) return [place]
  const files = readdirSync(place, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => join(place, name))
  if (files.length === 0) throw new Error('no .json file in this folder')
  return files
}
