/** Feelers that are set in a drawn livening, with what the engine told of them last. */
import { useMemo } from 'react'
import { useStore } from 'zustand'
import { aboutWords, amperes, feltWords, say, verdictWords, volts } from '../../../text'
import { type Felt, gradeStore } from '../../stores/gradeStore'
import type { StageProps } from '../site/stageSlot'

type Feelers = NonNullable<StageProps['feelers']>
type SetFeelers = Omit<Feelers, 'reads'>

export function useFeelers(feelers: SetFeelers | null): Feelers | null {
  const felt = useStore(gradeStore, (grade) => grade.felt)
  const key = JSON.stringify(feelers ?? null)
  return useMemo(() => {
    const set = JSON.parse(key) as SetFeelers | null
    return set && { ...set, reads: felt?.kind === set.kind ? readingOf(felt) : null }
  }, [key, felt])
}

function readingOf({ kind, exposure }: Felt): string {
  if (!exposure) return feltWords(kind, null)
  const current = aboutWords(amperes(exposure.bodyCurrent))
  return say('scene.verdict', {
    figure: `${volts(exposure.prospectiveVoltage)}, ${current}`,
    verdict: verdictWords(exposure),
  })
}
