/** Words for the open job: those of its pack, then the program's own and its scenario's in the terms of the pack. */
import { useMemo } from 'react'
import { useStore } from 'zustand'
import { type Speaker, english, makeSpeakerOf } from '../../text'
import { packWordsOf, scenarioWordsOf } from '../storage/library'
import { jobStore } from '../stores/jobStore'

export function useSpeaker(): Speaker {
  const scenario = useStore(jobStore, (job) => job.head?.scenario ?? '')
  const pack = useStore(jobStore, (job) => job.head?.pack ?? '')
  const own = useStore(jobStore, (job) => job.head?.own)
  return useMemo(() => speakerOf(scenario, pack), [scenario, pack, own])
}

export const speakerOf = (scenario: string, pack: string): Speaker =>
  makeSpeakerOf(packWordsOf(pack), english, scenarioWordsOf(scenario))
