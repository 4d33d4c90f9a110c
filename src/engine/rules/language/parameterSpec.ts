/** Plain description of a rule kind's parameters, so that a bad pack is refused with every fault named at once. */

export type ParameterSpec = { readonly says: string; readonly optional?: boolean } & (
  | { readonly kind: 'pattern' }
  | { readonly kind: 'patterns'; readonly least?: number }
  | { readonly kind: 'predicate'; readonly about: readonly ('site' | 'person' | 'moment' | 'act')[] }
  | {
      readonly kind: 'predicates'
      readonly least?: number
      readonly about: readonly ('site' | 'person' | 'moment' | 'act')[]
    }
  | { readonly kind: 'number'; readonly least?: number; readonly most?: number }
  | { readonly kind: 'choice'; readonly of: readonly string[] }
  | { readonly kind: 'choices'; readonly of: readonly string[] }
  /** Globs over a vocabulary of names. */
  | { readonly kind: 'names'; readonly of: NameKind }
  | { readonly kind: 'flag' }
  | { readonly kind: 'links' }
  | { readonly kind: 'literal' }
  | { readonly kind: 'putRight' }
)

export type NameKind = 'action' | 'gearType' | 'role' | 'set' | 'measure' | 'truth' | 'rule' | 'any'

export type ParameterSpecs = Readonly<Record<string, ParameterSpec>>

/** Something in a pack that cannot be used: where, what was found, what is allowed. */
export interface PackIssue {
  readonly path: string
  readonly found: string
  readonly allowed: string
}
