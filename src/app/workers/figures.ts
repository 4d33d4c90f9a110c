/** What the worker that tries published figures tells. */
import type { CaseResult } from '../../reports/qualification'

export type FiguresAnswer =
  | { readonly tell: 'count'; readonly total: number; readonly all: number }
  | { readonly tell: 'case'; readonly result: CaseResult }
  | { readonly tell: 'done' }
  | { readonly tell: 'failed'; readonly reason: string }
