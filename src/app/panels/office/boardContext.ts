/** What every field of the form needs to know of the draft around it. */
import { type ComponentType, type ReactNode, createContext, useContext } from 'react'
import type { FormNode } from '../../../files/form/formNode'
import type { DraftIssue } from '../../stores/office/draft'
import { type Place, placeText } from '../../stores/office/place'

export interface FieldProps {
  readonly place: Place
  readonly node: FormNode
  readonly value: unknown
  readonly label: string
  readonly says?: string | undefined
  /** Beside the label: takes the field out, moves the entry. */
  readonly tools?: ReactNode
  /** What stands around it has its heading already. */
  readonly isBare?: boolean
  /** Of a list of rules, only those of this element. */
  readonly element?: string | undefined
}

export interface Board {
  /** Fields hold fields: each finds the others here. */
  readonly Field: ComponentType<FieldProps>
  /** By the place that they speak of. */
  readonly issues: ReadonlyMap<string, readonly DraftIssue[]>
  readonly unfolded: ReadonlySet<string>
  /** Lists of names that the page offers, by what they are names of. */
  readonly names: ReadonlyMap<string, readonly string[]>
  /** Keys of words that are written in the rules that say them. */
  readonly saidInRules: ReadonlySet<string>
}

export const BoardContext = createContext<Board | null>(null)

export function useBoard(): Board {
  const board = useContext(BoardContext)
  if (!board) throw new Error('expected a board around a field')
  return board
}

/** How many issues there are at a place and in what lies in it. */
export function issuesWithin({ issues }: Board, place: Place): number {
  const start = placeText(place)
  return [...issues].reduce(
    (count, [at, list]) =>
      at === start || (/^[.[]/.test(at.slice(start.length)) && at.startsWith(start)) ? count + list.length : count,
    0,
  )
}
