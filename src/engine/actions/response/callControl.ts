/** One message to the control room. */
import type { Action } from '../action'
import { mark, perceive } from '../changes'
import { choiceIn } from '../orderValues'
import { always } from '../refuse'

export const callControl: Action = {
  id: 'call-control',
  covers: ['A77'],
  speech: true,
  values: {
    message: {
      kind: 'choice',
      many: false,
      // Nobody asks for it to be closed again before anything has gone off.
      of: ({ livening }) => [
        ...['all-well', 'indication', 'job-stopped', 'line-came-alive', 'need-ambulance'],
        ...(livening ? ['reclose-now'] : []),
      ],
    },
  },
  check: always,
  takes: () => 30,
  apply: (site, order) => {
    const message = choiceIn(order, 'message')
    return perceive(mark(site, `called:${message}`), order.who, {
      of: 'control',
      by: 'hear',
      says: 'control.message-noted',
      values: { message },
    })
  },
}
