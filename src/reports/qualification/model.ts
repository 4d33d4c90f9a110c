/** What a qualification model is: it reads its inputs, and answers with values or with the reason why it has none. */
import type { Inputs } from './inputs'

/** Text of a file of a scenario by its place, `<slug>/scenario.json`; undefined when there is none. */
export type FindScenarioText = (place: string) => string | undefined

export type Values = { readonly [key: string]: number | string | Values } | readonly (number | string | Values)[]

export interface NoAnswer {
  readonly noAnswer: string
}

export interface Model {
  readonly name: string
  /** Reads everything; the answer is asked for only when the inputs had no problem. */
  prepare(inputs: Inputs, findText: FindScenarioText): () => Values | NoAnswer
}

export function model<Read>(
  name: string,
  read: (inputs: Inputs, findText: FindScenarioText) => Read,
  answer: (read: Read) => Values | NoAnswer,
): Model {
  return {
    name,
    prepare: (inputs, findText) => {
      const values = read(inputs, findText)
      return () => answer(values)
    },
  }
}

export function isNoAnswer(answer: Values | NoAnswer): answer is NoAnswer {
  return Object.hasOwn(answer, 'noAnswer')
}
