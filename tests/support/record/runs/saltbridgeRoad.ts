/** The recorded runs of Saltbridge Road. Seeds with a fixed draw: 1 a guard with an open end, and blade B falls shut at the first touch; 2 nothing. */
import { together, withoutCover } from '../deviations'
import { unbonded, unbrushed, untugged } from '../mistakes'
import { rescueTooSoon } from '../shortcuts'
import type { RecordedRun } from '../recordedRun'

const pack = 'concrete-rod'

export const saltbridgeRoadRuns: readonly RecordedRun[] = [
  {
    name: 'clean',
    seed: 2,
    pack,
    about: 'Both legs, transformer and lamps wire made safe; nothing livened.',
  },
  {
    name: 'clean-livened',
    seed: 1,
    pack,
    about: 'The open guard is found; blade B falls shut under the hand; response, fresh gear, finished.',
  },
  {
    name: 'untugged',
    seed: 2,
    pack,
    about: 'Nobody tugs at a clamp.',
    conduct: untugged,
  },
  {
    name: 'unbrushed',
    seed: 2,
    pack,
    about: 'Nobody cleans the conductors where the clamps go on.',
    conduct: unbrushed,
  },
  {
    name: 'no-cover',
    seed: 2,
    pack,
    about: 'The cover stays on the truck: bare concrete at the thigh.',
    conduct: () => withoutCover,
  },
  {
    name: 'unbonded',
    seed: 2,
    pack,
    about: 'The arm is not tied to the line.',
    conduct: unbonded,
  },
  {
    name: 'rescue-too-soon',
    seed: 1,
    pack,
    about: 'No cover, no bond; the line comes alive at the first touch, and the ground worker climbs after.',
    conduct: () => together(withoutCover, unbonded(), rescueTooSoon('RK-361', 'FA-1')),
  },
  { name: 'by-multi-ground', seed: 2, pack: 'multi-ground', about: 'The whole job by other rules.' },
]
