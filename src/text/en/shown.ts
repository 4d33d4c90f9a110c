/** Words of a job that is shown. */
import type { Words } from '../words'

export const shown = {
  'shown.working': 'Working out the job.',
  'shown.failed': 'This one cannot be shown: {reason}',
  'shown.start': 'Before the first act.',
  'shown.act': 'Act {number} of {total}',
  'shown.end': 'Shown to the end.',
  'shown.corners': '{count} corners',
  'shown.cards': '{count card|cards}',
  'shown.declined.blade-closed': 'The work was declined and handed back: a blade stayed closed, {about:thing}.',
  'shown.declined.casualty': 'The job ended here: {about:person} was struck; another crew takes it up.',
  'shown.declined.not-dead': 'The work was declined and handed back: it could not be proved dead, {about:thing}.',
  'shown.declined.no-sound-gear':
    'The work was declined and handed back: nothing sound of its kind on the truck, {about:gear}.',
  'shown.controls': 'Show',
  'shown.play': 'Play',
  'shown.hold': 'Hold',
  'shown.next': 'Next act',
  'shown.backPart': 'Back a part',
  'shown.pace': 'Pace',
  'shown.pace.slow': 'slow',
  'shown.pace.steady': 'steady',
  'shown.pace.fast': 'fast',
  'shown.jump': 'Go to a part',
  'shown.at': 'at {part}',
  'shown.takeOver': 'Go on from here yourself',
  'shown.yourself': 'Do it yourself from the beginning',
  'shown.banner': 'This job is being shown: the crew takes no orders from you.',
  'shown.toSite': 'To the site',
  'shown.unscored': 'Not scored: all of it was shown.',
  'shown.unscoredFrom': 'Not scored: the first {count order was|orders were} shown.',
} as const satisfies Words
