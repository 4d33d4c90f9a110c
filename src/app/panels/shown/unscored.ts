/** What stands in place of a score: how much of the run was shown; nothing for a run of one's own. */
import { say } from '../../../text'
import type { JobHead } from '../../stores/jobStore'

export function unscored(head: JobHead | null): string | null {
  if (head?.isShowing) return say('shown.unscored')
  return head?.shown ? say('shown.unscoredFrom', { count: head.shown }) : null
}
