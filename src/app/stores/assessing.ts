/**
 * An assessment on one device: set up by the assessor, run by the candidate, opened again only with the pass phrase. The
 * seed is drawn here and shown to nobody before the release.
 */
import { keep } from '../storage/keep'
import { type SetUp, assessStore, noAssessment } from './assessStore'
import { forgetGrade } from './gradeStore'
import { headFor } from './headFor'
import { openJob } from './openJob'
import { makeLock, opens } from './passPhrase'
import { goTo } from './viewStore'

interface Attempt {
  readonly scenario: string
  readonly seed: number
}

const attempts = (): readonly Attempt[] => {
  const kept = keep.read('attempts')
  return Array.isArray(kept) ? (kept as Attempt[]) : []
}

export const hasAttempt = (scenario: string): boolean => attempts().some((it) => it.scenario === scenario)

export interface Wishes {
  readonly assessor: string
  readonly candidate: string
  readonly scenario: string
  readonly pack: string
  readonly phrase: string
  /** The variant of the last attempt once more. */
  readonly isSame: boolean
}

/** Draws the variant and hands the device over: first to a task that nobody records. */
export function setUpAssessment(wishes: Wishes): void {
  const before = attempts().filter((it) => it.scenario === wishes.scenario)
  const drawn = 1 + (crypto.getRandomValues(new Uint32Array(1))[0]! % 999_999_999)
  const seed = wishes.isSame ? (before.at(-1)?.seed ?? drawn) : drawn
  const { assessor, candidate, scenario, pack } = wishes
  const attempt = before.filter((it) => it.seed === seed).length + 1
  const setUp: SetUp = { assessor, candidate, scenario, pack, seed, attempt, lock: makeLock(wishes.phrase) }
  assessStore.setState({ ...noAssessment, setUp, phase: 'trying' })
  forgetGrade()
  openJob(headFor(scenario, 1, 'practise', { pack, person: candidate }))
  goTo('site')
}

/** The candidate has tried the controls and begins. */
export function beginAssessment(): void {
  const { setUp } = assessStore.getState()
  if (!setUp) return
  keep.write('attempts', [...attempts(), { scenario: setUp.scenario, seed: setUp.seed }])
  assessStore.setState({ phase: 'running' })
  forgetGrade()
  openJob(headFor(setUp.scenario, setUp.seed, 'assess', { pack: setUp.pack, person: setUp.candidate }))
}

export function release(phrase: string): boolean {
  const { setUp } = assessStore.getState()
  if (!setUp || !opens(setUp.lock, phrase)) return false
  assessStore.setState({ phase: 'released' })
  return true
}
