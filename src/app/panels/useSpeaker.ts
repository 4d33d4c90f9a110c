/** Words for the open job: the program's own, then those of its scenario and pack. */
import { useMemo } from 'react'
import { useStore } from 'zustand'
import { type Speaker, english, makeSpeaker } from '../../text'
import { packWordsOf, scenarioWordsOf } from '../storage/library'
import { jobStore } from '../stores/jobStore'

export function useSpeaker(): Speaker {
  const scenario = useStore(jobStore, (job) => job.head?.scenario ?? '')
  const pack = useStore(jobStore, (job) => job.head?.pack ?? '')
  return useMemo(() => speakerOf(scenario, pack), [scenario, pack])
}

export const speakerOf = (scenario: string, pack: string): Speaker =>
  makeSpeaker(english, scenarioWordsOf(scenario), packWordsOf(pack))
