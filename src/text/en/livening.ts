/** Words of a livening as it is drawn: its time, its drawings, its feelers. */
import type { Words } from '../words'

export const livening = {
  'livening.arrow': 'about {current}',
  'livening.rise': 'site {rise}',
  'livening.working': 'Working out what reached whom',
  'livening.none': 'Nothing came alive',
  'livening.back': 'Back to the job',
  'livening.plan': 'Plan of the instant',
  'livening.interval': 'Ground potential each 250 V, heavy each 1 000 V',
  'livening.pace': 'Dash-dot: a pace of 1 m reaches {step:V}, tolerable for {duration:s} at 50 kg',
  'livening.paceLasting': 'Dash-dot: a pace of 1 m reaches {step:V}, tolerable for 5 s at 50 kg; nothing cleared it',
  'livening.metres': 'Lengths in metres',
  'livening.reached': 'What reached each person',
  'livening.worstPath': 'worst path',
  'livening.nobody': 'Nobody touched anything that was raised.',
  'livening.verdicts': 'Verdicts, mildest first',
  'feelers.title': 'Feelers',
  'feelers.how': 'what would reach a bare body there, 50 kg',
  'feelers.pace': 'A pace',
  'feelers.touch': 'A hand and feet',
  'feelers.east': 'm east of the pole',
  'feelers.north': 'm north',
  'feelers.nowhere': 'Press a point of the plan, or write one.',
  'feelers.nothing': 'Nothing within an arm’s length of there leads current.',
  'feelers.level': 'The ground is level there: not felt.',
  'feelers.same': 'Nothing worth a number flows from one to the other.',
  'feelers.paceReads':
    'Between the feet about {voltage}, tolerable {limit} for {time}; through the body about {current}:',
  'feelers.touchReads':
    'Between hand and feet about {voltage}, tolerable {limit} for {time}; through the body about {current}:',
  'feelers.handsReads':
    'Between the hands about {voltage}; through the body about {current}, limit {limit} for {time}:',
  'livening.branches': 'Current in each part, as a table',
  'livening.from': 'From',
  'livening.to': 'To',
  'livening.current': 'Current',
  'livening.earth': 'earth',
} as const satisfies Words
