/** Scenarios, packs and runs from their places. Everything that is wrong is gathered, so that it is told at once. */
import { existsSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { actions, type Pack, type ScenarioBase } from '../engine'
import { digestOf } from '../files/digest'
import { readPack } from '../files/rulePack/read'
import type { Run } from '../files/run/run'
import { readRun } from '../files/run/read'
import { readScenario } from '../files/scenario/read'
import { fileIn, folderEntries, isFolder, readText, type Gathered } from './input'

export interface LoadedScenario {
  readonly place: string
  /** Where its runs and words lie; undefined when it came from standard input. */
  readonly folder: string | undefined
  readonly base: ScenarioBase
  readonly digest: string
}

export interface LoadedPack {
  readonly place: string
  readonly pack: Pack
  readonly digest: string
}

export interface LoadedRun {
  readonly place: string
  readonly run: Run
  readonly digest: string
}

export function loadScenario(place: string, gathered: Gathered): LoadedScenario | undefined {
  const file = fileIn(place, 'scenario.json')
  let text = ''
  const base = gathered.take(file, () => readScenario((text = readText(file))))
  return (
    base && { place: file, folder: file === '-' ? undefined : dirname(file), base, digest: digestOf(JSON.parse(text)) }
  )
}

export function loadPack(place: string, gathered: Gathered): LoadedPack | undefined {
  const file = fileIn(place, 'pack.json')
  let text = ''
  const pack = gathered.take(file, () => readPack((text = readText(file))))
  return pack && { place: file, pack, digest: digestOf(JSON.parse(text)) }
}

/** The pack that a run names lies beside the scenario: `packs/<id>/` in the folder of scenarios. */
export function packPlace(scenario: LoadedScenario, id: string): string {
  return join(scenario.folder ?? '.', '..', 'packs', id)
}

export function loadRun(
  place: string,
  scenario: LoadedScenario | undefined,
  gathered: Gathered,
): LoadedRun | undefined {
  let text = ''
  const run = gathered.take(place, () => readRun((text = readText(place)), actions, scenario?.base))
  return run && { place, run, digest: digestOf(JSON.parse(text)) }
}

/** A folder stands for the .json files in it. */
export function runPlaces(places: readonly string[]): readonly string[] {
  return places.flatMap((place) =>
    place !== '-' && isFolder(place)
      ? folderEntries(place)
          .filter((name) => name.endsWith('.json'))
          .map((name) => join(place, name))
      : [place],
  )
}

/** The recorded clean run of a scenario: it prepares the site for runs that start later. */
export function cleanRunPlace(scenario: LoadedScenario): string | undefined {
  const place = join(scenario.folder ?? '.', 'runs', 'clean.json')
  return scenario.folder !== undefined && existsSync(place) ? place : undefined
}

export function shortName(place: string): string {
  return place === '-' ? 'standard input' : basename(place)
}
