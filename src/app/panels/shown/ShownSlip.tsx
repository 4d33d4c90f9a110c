/** In place of the acts: what is ordered just now, and why the pack asks for it, in its own words. */
import { useStore } from 'zustand'
import type { Order } from '../../../engine'
import { generalPart, say } from '../../../text'
import { findRule } from '../../storage/findRule'
import { packWordsOf } from '../../storage/library'
import { jobStore } from '../../stores/jobStore'
import { shownStore } from '../../stores/shownStore'
import { useBelief } from '../useBelief'
import { useSpeaker } from '../useSpeaker'
import { orderWords } from './orderWords'

/** @param top pixels from the top of the drawings that something else takes; under the plan when not given */
export function ShownSlip({ top }: { top?: number | undefined }) {
  const job = useStore(shownStore, (shown) => shown.job)
  const failure = useStore(shownStore, (shown) => shown.failure)
  const ordered = useStore(jobStore, (it) => it.ordered)
  const order = job?.orders[ordered - 1]
  return (
    <section
      className='slip shownslip'
      aria-label={say('shown.controls')}
      aria-live='polite'
      style={top === undefined ? undefined : { top, maxHeight: `calc(100% - ${top + 8}px)` }}
    >
      <header>
        <h3>
          {job ? (order ? say('shown.act', { number: ordered, total: job.orders.length }) : say('shown.start')) : null}
          {!job && (failure === null ? say('shown.working') : say('shown.failed', { reason: failure }))}
        </h3>
      </header>
      <div className='acts'>
        {order && <Ordered order={order} />}
        {order && <Why index={ordered - 1} />}
        {job && ordered >= job.orders.length && <End />}
      </div>
    </section>
  )
}

function Ordered({ order }: { order: Order }) {
  const belief = useBelief()
  const speaker = useSpeaker()
  const { act, on, values } = orderWords(order, belief, speaker)
  return (
    <div className='shownorder'>
      <p>
        {speaker.say(`person.${order.who}`)}: <b>{act}</b>
      </p>
      {on.map((name) => (
        <p key={name}>{name}</p>
      ))}
      {values.map(({ name, words }) => (
        <p key={name}>
          <span className='q'>{name}:</span> {words}
        </p>
      ))}
    </div>
  )
}

function Why({ index }: { index: number }) {
  const speaker = useSpeaker()
  const pack = useStore(jobStore, (job) => job.head?.pack ?? '')
  const id = useStore(shownStore, (shown) => shown.reasons[index])
  const rule = id ? findRule(pack, id) : undefined
  if (!rule) return null
  const reason = generalPart(packWordsOf(pack)[rule.reason] ?? '')
  return (
    <div className='shownwhy' data-rule={rule.id}>
      <p>{speaker.say(rule.asks)}</p>
      {reason !== '' && <p className='q'>{reason}</p>}
      <p className='q'>{rule.source}</p>
    </div>
  )
}

function End() {
  const speaker = useSpeaker()
  const declined = useStore(shownStore, (shown) => shown.job?.declined ?? null)
  return (
    <p className='shownorder'>
      {declined ? speaker.say(`shown.declined.${declined.why}`, { about: declined.about }) : say('shown.end')}
    </p>
  )
}
