/** Runs qualification cases and says for each whether the program meets it, and if not, why. */
import { differences } from './compare'
import { Inputs } from './inputs'
import { isNoAnswer, type Model } from './model'
import { models } from './models'
import type { QualificationCase } from './qualificationCase'

export interface CaseResult {
  readonly id: string
  readonly model: string
  readonly passed: boolean
  /** Why it failed; empty when it passed. */
  readonly reasons: readonly string[]
}

export function qualifyCase(qualificationCase: QualificationCase): CaseResult {
  const reasons = reasonsAgainst(qualificationCase)
  return { id: qualificationCase.id, model: qualificationCase.model, passed: reasons.length === 0, reasons }
}

function reasonsAgainst(qualificationCase: QualificationCase): readonly string[] {
  const model = models.find(({ name }) => name === qualificationCase.model)
  if (model === undefined) {
    const known = models.map(({ name }) => name).join(', ')
    return [`no model is called ${qualificationCase.model}; the models are ${known}`]
  }
  try {
    return answerAgainst(model, qualificationCase)
  } catch (error) {
    // An invariant of the engine: the inputs passed the reader but make no sense together.
    return [`the model stopped: ${error instanceof Error ? error.message : String(error)}`]
  }
}

function answerAgainst(model: Model, qualificationCase: QualificationCase): readonly string[] {
  const inputs = new Inputs(qualificationCase.inputs)
  const answer = model.prepare(inputs)
  const problems = inputs.problems()
  if (problems.length > 0) return problems
  const output = answer()
  return isNoAnswer(output) ? [output.noAnswer] : differences(output, qualificationCase)
}

/** One line per case, then the totals. */
export function qualificationLines(results: readonly CaseResult[]): readonly string[] {
  const passed = results.filter((result) => result.passed).length
  const lines = results.map(({ id, model, passed, reasons }) =>
    passed ? `passed  ${id}  ${model}` : `failed  ${id}  ${model}  ${reasons.join('; ')}`,
  )
  return [...lines, `${passed} passed, ${results.length - passed} failed`]
}
