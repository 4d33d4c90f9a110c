/** The record of an assessment: run, result, digests, names, marks and notes; provisional until a person signs. */
import { engineDigest } from '../../engine'
import { assessStore } from './assessStore'
import { exportResult } from './exportResult'
import { currentRun, exportRun } from './exportRun'
import { gradeStore } from './gradeStore'
import { jobStore } from './jobStore'

const recordFormat = 'earths-on/record'
const recordVersion = 1

export function exportRecord(caution: string): string {
  const { setUp, notes, marks, overrule } = assessStore.getState()
  const { graded } = gradeStore.getState()
  const { reloads, withdrawn } = jobStore.getState()
  const run = currentRun()
  const record = {
    format: recordFormat,
    version: recordVersion,
    caution,
    status: 'provisional until a person signs',
    candidate: setUp?.candidate ?? '',
    assessor: setUp?.assessor ?? '',
    attempt: setUp?.attempt ?? 1,
    digests: { scenario: run.scenarioDigest, pack: run.packDigest, engine: engineDigest },
    reloads,
    withdrawn,
    marks,
    overrule,
    notes,
    notJudged: graded?.result.notJudged ?? [],
    run: JSON.parse(exportRun()) as unknown,
    result: graded ? (JSON.parse(exportResult(graded.result)) as unknown) : null,
  }
  return `${JSON.stringify(record, null, 1)}\n`
}
