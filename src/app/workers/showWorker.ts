/** Does the whole job by the pack's rules, as an apprentice is shown it, and then finds the reason of each act. */
import { demonstrate, findOpening, parts, reasonsOf } from '../../engine'
import { requirePack } from '../storage/library'
import { beginJob } from '../storage/replayJob'
import type { ShowAnswer, ShowQuestion } from './showing'

/** Reasons told at once: the first are wanted soon. */
const together = 20

const answer = (it: ShowAnswer): void => self.postMessage(it)

self.onmessage = ({ data }: MessageEvent<ShowQuestion>) => {
  try {
    show(data)
  } catch (error) {
    answer({ tell: 'failed', reason: error instanceof Error ? error.message : String(error) })
  }
}

function show({ head }: ShowQuestion): void {
  const { scenario } = beginJob({ ...head, startsAt: 'beginning' })
  const pack = requirePack(head.pack)
  const { timeline, orders, declined } = demonstrate(scenario, pack)
  const openings = parts.flatMap((part) => {
    const before = findOpening(timeline, part)
    return before === undefined ? [] : [{ part, orders: before }]
  })
  answer({ tell: 'job', job: { orders, openings, declined } })
  const reasons = reasonsOf(timeline, pack)
  for (let from = 0; from < orders.length; from += together) {
    const rules = orders.slice(from, from + together).map((_, i) => reasons(from + i)[0] ?? null)
    answer({ tell: 'reasons', from, rules })
  }
}
