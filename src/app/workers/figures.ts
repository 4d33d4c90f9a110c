/** What the worker that tries published figures tells. */
import type { CaseResult } from '../../reports/qualification'

/** The shipped scenarios and their clean runs, which cases of whole sites stand on, by place. */
export interface FiguresQuestion {
  readonly scenarios: Readonly<Record<string, string>>
}

export type FiguresAnswer =
  | { readonly tell: 'count'; readonly total: number; readonly all: number }
  | { readonly tell: 'case'; readonly result: CaseResult }
  | { readonly tell: 'done' }
  | { readonly tell: 'failed'; readonly reason: string }
