/**
 * An assessment on one device, kept between visits; how it is set up, run and released stands in assessing.ts. The Depot
 * reads this before the engine is fetched.
 */
import { createStore } from 'zustand/vanilla'
import { keep } from '../storage/keep'
import type { Lock } from './passPhrase'

export interface SetUp {
  readonly assessor: string
  readonly candidate: string
  readonly scenario: string
  readonly pack: string
  readonly seed: number
  /** First, second … run on this variant on this device. */
  readonly attempt: number
  readonly lock: Lock
}

export type Phase = 'none' | 'trying' | 'running' | 'released'

/** 1 to 5, or not observed. */
export type Mark = 1 | 2 | 3 | 4 | 5 | 'not-observed'

/** The assessor's word against the machine's outcome, with its reason. */
export interface Overrule {
  readonly outcome: 'pass' | 'fail'
  readonly reason: string
}

export interface Assessment {
  readonly setUp: SetUp | null
  readonly phase: Phase
  readonly notes: string
  readonly marks: Readonly<Record<string, Mark>>
  readonly overrule: Overrule | null
}

export const noAssessment: Assessment = { setUp: null, phase: 'none', notes: '', marks: {}, overrule: null }

function readKept(): Assessment {
  const kept = keep.read('assessment') as Partial<Assessment> | undefined
  return kept?.setUp && kept.phase ? { ...noAssessment, ...kept } : noAssessment
}

export const assessStore = createStore<Assessment>(readKept)

assessStore.subscribe((assessment) => void keep.write('assessment', assessment))

export const writeNotes = (notes: string): void => assessStore.setState({ notes })

export const setMark = (element: string, mark: Mark): void =>
  assessStore.setState((now) => ({ marks: { ...now.marks, [element]: mark } }))

export const setOverrule = (overrule: Overrule | null): void => assessStore.setState({ overrule })

export function endAssessment(): void {
  assessStore.setState(noAssessment)
}
