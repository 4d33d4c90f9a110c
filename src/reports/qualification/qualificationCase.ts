/** One check of a model against a figure from outside the program, as read from an earths-on/qualification file. */

/** Either one satisfied passes. */
export interface Tolerance {
  readonly relative?: number | undefined
  readonly absolute?: number | undefined
}

export interface QualificationCase {
  readonly id: string
  readonly model: string
  /** Where the expected figures come from. */
  readonly source: string
  readonly inputs: Readonly<Record<string, unknown>>
  /** Dotted path into the model's output → number, or a string that must match exactly. */
  readonly expected: Readonly<Record<string, number | string>>
  /** For every number, or one per path. Numbers without a tolerance cannot pass. */
  readonly tolerance?: Tolerance | Readonly<Record<string, Tolerance>> | undefined
}
