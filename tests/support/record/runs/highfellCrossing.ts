/** The recorded runs of Highfell Crossing. Seeds with a fixed draw: 1 a stick with a carbon track, and the 33 kV crossing clashes at the first touch; 2 nothing. */
import { exchanging, questionNotAsked, recloseLeftOn, unbonded } from '../mistakes'
import { crossingGuarded, jumperBridged, jumperByHand, jumpersOut } from '../shortcuts'
import type { RecordedRun } from '../recordedRun'

const pack = 'concrete-rod'

export const highfellCrossingRuns: readonly RecordedRun[] = [
  {
    name: 'clean',
    seed: 2,
    pack,
    about: 'The crossing cannot be taken out: every feeder without reclosing, large leads, cover on the damp wood.',
  },
  {
    name: 'clean-livened',
    seed: 1,
    pack,
    about: 'The tracked stick is found; 33 kV clashes with B under the hand; response, fresh gear, finished.',
  },
  {
    name: 'question-not-asked',
    seed: 2,
    pack,
    about: 'Nobody asks what could liven the line.',
    conduct: questionNotAsked,
  },
  {
    name: 'reclose-left-on',
    seed: 2,
    pack,
    about: 'Reclosing stays as it is on every feeder.',
    conduct: recloseLeftOn,
  },
  {
    name: 'thin-lead',
    seed: 2,
    pack,
    about: 'A lead of 25 mm² goes up instead of the large one that was passed.',
    conduct: () => exchanging('lead', 'E-171'),
  },
  {
    name: 'unbonded',
    seed: 2,
    pack,
    about: 'The steel arm is not tied to the line.',
    conduct: unbonded,
  },
  {
    name: 'crossing-guarded',
    seed: 2,
    pack,
    about: 'People of the control room put a guard under the 33 kV.',
    conduct: () => crossingGuarded('fx'),
  },
  {
    name: 'jumper-bridged',
    seed: 2,
    pack,
    about: 'The jumper of B is opened with the stick, a by-pass lead across the gap.',
    conduct: () => jumperBridged('conductor-b', 'BY-1'),
  },
  {
    name: 'jumper-by-hand',
    seed: 2,
    pack,
    about: 'The jumper of B is undone with both hands, nothing across the gap.',
    conduct: () => jumperByHand('conductor-b'),
  },
  {
    name: 'jumpers-out',
    seed: 2,
    pack,
    about: 'The jumpers at pole H22 are out and tied back: the 33 kV cannot come here.',
    conduct: () => jumpersOut('jumpers-22'),
  },
  {
    name: 'jumpers-out-multi-ground',
    seed: 2,
    pack: 'multi-ground',
    about: 'The same by other rules.',
    conduct: () => jumpersOut('jumpers-22'),
  },
  {
    name: 'jumpers-out-two-earths',
    seed: 2,
    pack: 'two-earths',
    about: 'The same by other rules again.',
    conduct: () => jumpersOut('jumpers-22'),
  },
]
