/** What grading gave, in the same format and the same bytes as the command line writes for the run that goes with it. */
import { engineDigest, engineVersion, type Result } from '../../engine'
import { digestOf } from '../../files/digest'
import { writeResult } from '../../files/result/write'
import { currentRun, exportRun } from './exportRun'

export function exportResult(result: Result): string {
  const { scenario, scenarioDigest, packDigest } = currentRun()
  const head = {
    run: scenario,
    runDigest: digestOf(JSON.parse(exportRun())),
    scenarioDigest,
    packDigest,
    engine: engineVersion,
    engineDigest,
  }
  return writeResult(head, result)
}
