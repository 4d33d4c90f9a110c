/**
 * Something came alive. Nothing is explained: the crew has heard and seen what it could. The clock holds; each person gets
 * one order and the control room one message, then the job goes on.
 */
import { useStore } from 'zustand'
import { say, timeOfDay } from '../../../text'
import { drawEvent } from '../../stores/gradeStore'
import { jobStore } from '../../stores/jobStore'
import { answerEvent, closeEvent, give, goOnUntilFree } from '../../stores/orders'
import { showLivening } from '../../stores/viewStore'
import { useBelief } from '../useBelief'
import { useSpeaker } from '../useSpeaker'
import { crewInOrder } from './crewInOrder'
import { told } from './LogColumn'

const replies = [
  { key: 'still', draft: { do: 'keep-still', values: {} } },
  { key: 'down', draft: { do: 'climb', values: { to: 'foot' } } },
  { key: 'away', draft: { do: 'walk', on: 'clear', values: {} } },
  { key: 'toPole', draft: { do: 'walk', on: 'pole-foot', values: {} } },
] as const

const messages = ['all-well', 'line-came-alive', 'need-ambulance', 'reclose-now'] as const

export function EventSheet() {
  const belief = useBelief()
  const speaker = useSpeaker()
  const event = useStore(jobStore, (job) => job.event)
  const notices = useStore(jobStore, (job) => job.notices)
  if (!event) return null
  const leader = crewInOrder(belief)[0]!.id
  const perceived = belief.evidence.filter((line) => line.at > event.at)
  return (
    <div className='stack event scroll' role='region' aria-label={say('event.title')}>
      <h2 className='head'>{say('event.title')}</h2>
      <p className='q'>{say('event.clock', { time: timeOfDay(belief.sheet.startsAt + event.at) })}</p>
      <ul className='gap'>
        {told(perceived, belief, speaker).map((line) => (
          <li key={line.key}>
            {line.words} <span className='q'>{line.who.join(', ')}</span>
          </li>
        ))}
      </ul>
      <table className='gap'>
        <thead>
          <tr>
            <th>{say('event.person')}</th>
            <th>{say('event.order')}</th>
          </tr>
        </thead>
        <tbody>
          {crewInOrder(belief).map((person) => (
            <tr key={person.id}>
              <th scope='row'>{speaker.say(`person.${person.id}`)}</th>
              <td>
                {event.answered.includes(person.id) ? (
                  <span className='q'>{say('event.ordered')}</span>
                ) : (
                  <div className='replies'>
                    {replies.map(({ key, draft }) => (
                      <button
                        key={key}
                        type='button'
                        className='btn'
                        onClick={() => give(draft, [person.id]) && answerEvent(person.id)}
                      >
                        {say(`event.${key}`)}
                      </button>
                    ))}
                    <button type='button' className='btn' onClick={() => answerEvent(person.id)}>
                      {say('event.none')}
                    </button>
                  </div>
                )}
              </td>
            </tr>
          ))}
          <tr>
            <th scope='row'>{say('event.control')}</th>
            <td>
              {event.answered.includes('control') ? (
                <span className='q'>{say('event.called')}</span>
              ) : (
                <div className='replies'>
                  {messages.map((message) => (
                    <button
                      key={message}
                      type='button'
                      className='btn'
                      onClick={() =>
                        goOnUntilFree([leader]) &&
                        give({ do: 'call-control', values: { message } }, [leader]) &&
                        answerEvent('control')
                      }
                    >
                      {speaker.say(`choice.${message}`)}
                    </button>
                  ))}
                </div>
              )}
            </td>
          </tr>
        </tbody>
      </table>
      {notices.map((notice) => (
        <p key={notice.code} role='status'>
          {speaker.say(`refusal.${notice.code.split('/')[1]}`, notice.values)}
        </p>
      ))}
      <div className='foot'>
        <button
          type='button'
          className='btn go'
          onClick={() => {
            closeEvent()
            if (belief.sheet.purpose !== 'practise') return
            drawEvent()
            showLivening(true)
          }}
        >
          {say(belief.sheet.purpose === 'practise' ? 'event.drawing' : 'event.goOn')}
        </button>
        {belief.sheet.purpose === 'practise' && (
          <button type='button' className='btn' onClick={closeEvent}>
            {say('event.goOn')}
          </button>
        )}
      </div>
    </div>
  )
}
