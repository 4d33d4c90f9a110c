/** Every recorded run comes out of its scenario's packed file as it lies in the folder, but for what it must give. */
import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { scenarioIds } from '../../../src/app/storage/library'
import { recordedRuns } from '../../../src/app/storage/recordedRuns'

test.each(scenarioIds)('%s', (scenario) => {
  const folder = `scenarios/${scenario}/runs`
  const files = readdirSync(folder).filter((name) => name.endsWith('.json'))
  const runs = recordedRuns(scenario)
  expect(Object.keys(runs).sort()).toEqual(files.map((name) => name.slice(0, -5)).sort())
  for (const file of files) {
    const run = JSON.parse(readFileSync(`${folder}/${file}`, 'utf8')) as { expect?: unknown }
    delete run.expect
    expect(JSON.parse(runs[file.slice(0, -5)]!), file).toEqual(run)
  }
})
