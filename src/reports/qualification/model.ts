/** What a qualification model is: it reads its inputs, and answers with values or with the reason why it has none. */
import type { Inputs } from './inputs'

export type Values = { readonly [key: string]: number | string | Values } | readonly (number | string | Values)[]

export interface NoAnswer {
  readonly noAnswer: string
}

export interface Model {
  readonly name: string
  /** Reads everything; the answer is asked for only when the inputs had no problem. */
  prepare(inputs: Inputs): () => Values | NoAnswer
}

export function model<Read>(
  name: string,
  read: (inputs: Inputs) => Read,
  answer: (read: Read) => Values | NoAnswer,
): Model {
  return {
    name,
    prepare: (inputs) => {
      const values = read(inputs)
      return () => answer(values)
    },
  }
}

export function isNoAnswer(answer: Values | NoAnswer): answer is NoAnswer {
  return Object.hasOwn(answer, 'noAnswer')
}
