/** The recorded runs of Bellweather Farm. Seeds with a fixed draw: 1 a stick with a carbon track, and the dairy's generator runs at the first touch; 2 nothing. */
import { conductorEndFirst, leadLeftAloft, questionNotAsked, unbrushed } from '../mistakes'
import type { RecordedRun } from '../recordedRun'

const pack = 'concrete-rod'

export const bellweatherFarmRuns: readonly RecordedRun[] = [
  {
    name: 'clean',
    seed: 2,
    pack,
    about: 'Carriers out and bagged, the owner asked, his switch open and locked.',
  },
  {
    name: 'clean-livened',
    seed: 1,
    pack,
    about:
      'The tracked stick is found; the blade of switch 2 falls shut under the hand; response, fresh gear, finished.',
  },
  {
    name: 'unbrushed',
    seed: 2,
    pack,
    about: 'Nobody cleans the conductor where the clamp goes on.',
    conduct: unbrushed,
  },
  {
    name: 'question-not-asked',
    seed: 2,
    pack,
    about: 'Nobody asks what could liven the line.',
    conduct: questionNotAsked,
  },
  {
    name: 'conductor-end-first',
    seed: 2,
    pack,
    about: 'The lead goes on the conductor before its earth end is on the rod.',
    conduct: conductorEndFirst,
  },
  {
    name: 'lead-left-aloft',
    seed: 2,
    pack,
    about: 'The lead stays at the pole top and the permit goes back.',
    conduct: leadLeftAloft,
  },
]
