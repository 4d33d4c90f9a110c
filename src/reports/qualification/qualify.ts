/** Runs qualification cases and says for each whether the program meets it, and if not, why. */
import { compared, differences, type ComparedValue } from './compare'
import { Inputs } from './inputs'
import { isNoAnswer, type FindScenarioText, type Model } from './model'
import { models } from './models'
import type { QualificationCase } from './qualificationCase'

export interface CaseResult {
  readonly id: string
  readonly model: string
  readonly source: string
  readonly passed: boolean
  /** Why it failed; empty when it passed. */
  readonly reasons: readonly string[]
  /** Expected beside got; empty when the model gave nothing. */
  readonly values: readonly ComparedValue[]
}

type Answered = Pick<CaseResult, 'reasons' | 'values'>

const withoutAnswer = (reasons: readonly string[]): Answered => ({ reasons, values: [] })

/** @param findText where the scenarios are that cases name; without it such a case has no answer */
export function qualifyCase(
  qualificationCase: QualificationCase,
  findText: FindScenarioText = () => undefined,
): CaseResult {
  const { id, model, source } = qualificationCase
  const answered = answerTo(qualificationCase, findText)
  return { id, model, source, passed: answered.reasons.length === 0, ...answered }
}

function answerTo(qualificationCase: QualificationCase, findText: FindScenarioText): Answered {
  const model = models.find(({ name }) => name === qualificationCase.model)
  if (model === undefined) {
    const known = models.map(({ name }) => name).join(', ')
    return withoutAnswer([`no model is called ${qualificationCase.model}; the models are ${known}`])
  }
  try {
    return answerAgainst(model, qualificationCase, findText)
  } catch (error) {
    // An invariant of the engine: the inputs passed the reader but make no sense together.
    return withoutAnswer([`the model stopped: ${error instanceof Error ? error.message : String(error)}`])
  }
}

function answerAgainst(model: Model, qualificationCase: QualificationCase, findText: FindScenarioText): Answered {
  const inputs = new Inputs(qualificationCase.inputs)
  const answer = model.prepare(inputs, findText)
  const problems = inputs.problems()
  if (problems.length > 0) return withoutAnswer(problems)
  const output = answer()
  if (isNoAnswer(output)) return withoutAnswer([output.noAnswer])
  return { reasons: differences(output, qualificationCase), values: compared(output, qualificationCase) }
}

/** One line per case with its source, then the totals. */
export function qualificationLines(results: readonly CaseResult[]): readonly string[] {
  const passed = results.filter((result) => result.passed).length
  const lines = results.map(({ id, model, source, passed, reasons }) =>
    passed ? `passed  ${id}  ${model}  ${source}` : `failed  ${id}  ${model}  ${reasons.join('; ')}  ${source}`,
  )
  return [...lines, `${passed} passed, ${results.length - passed} failed`]
}
