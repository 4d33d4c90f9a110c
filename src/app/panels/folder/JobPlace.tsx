/** The sheet of the open job that is looked at. */
import { useStore } from 'zustand'
import { jobStore } from '../../stores/jobStore'
import type { PlaceName } from '../../stores/viewStore'
import { AssessPlace } from '../assess/AssessPlace'
import { DebriefPlace } from '../debrief/DebriefPlace'
import { GearPlace } from '../gear/GearPlace'
import { JobSheetPlace } from '../jobSheet/JobSheetPlace'
import { SitePlace } from '../site/SitePlace'

export function JobPlace({ place }: { place: Exclude<PlaceName, 'depot' | 'figures' | 'office'> }) {
  const isAssessed = useStore(jobStore, (job) => job.head?.purpose === 'assess')
  if (place === 'job-sheet') return <JobSheetPlace />
  if (place === 'gear') return <GearPlace />
  if (place === 'site') return <SitePlace />
  return isAssessed ? <AssessPlace /> : <DebriefPlace />
}
