/** The clock, what the crew perceived in order of time, and the buttons of the hour. */
import { useEffect, useRef } from 'react'
import { useStore } from 'zustand'
import type { Belief, Evidence } from '../../../engine'
import { type Speaker, plain, say, timeOfDay } from '../../../text'
import { jobStore } from '../../stores/jobStore'
import { backTo, finish, goOn, markCheckpoint, undo, withdraw } from '../../stores/orders'
import { goTo, showDialog } from '../../stores/viewStore'
import { useBelief } from '../useBelief'
import { useSpeaker } from '../useSpeaker'
import { ShownButtons } from '../shown/ShownButtons'
import { refusalWords } from './ActionSlip'
import { lettersOf } from './lettersOf'

export function LogColumn() {
  const belief = useBelief()
  const speaker = useSpeaker()
  const now = useStore(jobStore, (job) => job.now)
  const isShowing = useStore(jobStore, (job) => job.head?.isShowing === true)
  const { weather, startsAt } = belief.sheet
  return (
    <section className='stack log' aria-label={say('site.log')}>
      <div className='clock'>
        <span className='n'>{timeOfDay(startsAt + now)}</span>
        <span className='q'>
          {say('site.weather', {
            wind: plain(weather.wind, 0),
            wet: say(weather.rain ? 'weather.rain' : 'weather.dry'),
          })}
        </span>
      </div>
      <Narration belief={belief} speaker={speaker} />
      <Notices speaker={speaker} />
      {isShowing ? <ShownButtons /> : <Buttons />}
    </section>
  )
}

function Narration({ belief, speaker }: { belief: Belief; speaker: Speaker }) {
  const end = useRef<HTMLDivElement>(null)
  const lines = belief.evidence
  useEffect(() => {
    if (end.current) end.current.scrollTop = end.current.scrollHeight
  }, [lines.length])
  return (
    <div className='scroll grow' ref={end} role='log' aria-label={say('site.narration')} tabIndex={0}>
      <table>
        <tbody>
          {told(lines.slice(-80), belief, speaker).map((line) => (
            <tr key={line.key}>
              <td className='n stamp'>
                {line.clock.slice(0, 5)}
                <span className='q'>{line.clock.slice(5)}</span>
              </td>
              <td>
                <b>{line.who.join(' ')}</b>
              </td>
              <td>{line.words}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

interface Told {
  readonly key: string
  readonly clock: string
  readonly who: readonly string[]
  readonly words: string
}

/** Lines of the log; what several perceived at the same second is told once. */
export function told(lines: readonly Evidence[], belief: Belief, speaker: Speaker): readonly Told[] {
  const found = new Map<string, Told>()
  for (const line of lines) {
    const words = narrate(line, belief, speaker)
    const key = `${line.at} ${words}`
    const who = [...new Set([...(found.get(key)?.who ?? []), lettersOf(belief, line.who)])]
    found.set(key, { key, clock: timeOfDay(belief.sheet.startsAt + line.at), who, words })
  }
  return [...found.values()]
}

/** One thing perceived, in words; what it was perceived of is named first where the sentence does not. */
function narrate(line: Evidence, belief: Belief, speaker: Speaker): string {
  const item = belief.items.find((it) => it.id === line.of)
  const name = item
    ? `${item.id} ${speaker.say(`gear.${item.type}`)}`
    : speaker.has(`thing.${line.of}`)
      ? speaker.say(`thing.${line.of}`)
      : ''
  const values = { of: line.of, name, who: line.who, ...line.values }
  const sentence = speaker.say(line.says, values)
  const isNamed = sentence.includes(line.of) || (name !== '' && sentence.includes(name)) || name === ''
  return isNamed ? sentence : `${name}: ${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}`
}

function Notices({ speaker }: { speaker: Speaker }) {
  const notices = useStore(jobStore, (job) => job.notices)
  const pencil = useStore(jobStore, (job) => job.pencil)
  return (
    <div className='notices' role='status'>
      {pencil && (
        <p className='pencil'>
          {speaker.say(`person.${pencil.who}`)}: {speaker.say(`action.${pencil.act}`)}
          <button type='button' className='btn' onClick={withdraw}>
            {say('site.withdraw')} <kbd>W</kbd>
          </button>
        </p>
      )}
      {notices.map((notice) => (
        <p key={notice.who + notice.code}>
          <b>{speaker.say(`person.${notice.who}`)}</b>: {refusalWords(speaker, notice)}
        </p>
      ))}
    </div>
  )
}

function Buttons() {
  const purpose = useStore(jobStore, (job) => job.head?.purpose)
  const checkpoints = useStore(jobStore, (job) => job.checkpoints)
  const ordered = useStore(jobStore, (job) => job.ordered)
  const busy = useStore(jobStore, (job) => job.busy)
  const last = checkpoints.at(-1)
  return (
    <div className='buttons'>
      <button
        type='button'
        className='btn go wide'
        onClick={() => void goOn()}
        aria-disabled={busy.length === 0 || undefined}
      >
        {say('site.goOn')} <kbd>G</kbd>
      </button>
      {purpose === 'practise' && (
        <>
          <button type='button' className='btn' onClick={undo} disabled={ordered === 0}>
            {say('site.undo')} <kbd>U</kbd>
          </button>
          <button type='button' className='btn' onClick={() => markCheckpoint(say('site.checkpoint'))}>
            {say('site.mark')}
          </button>
          <button type='button' className='btn wide' onClick={() => showDialog('hint')}>
            {say('site.hint')} <kbd>H</kbd>
          </button>
          {last && (
            <button type='button' className='btn wide' onClick={() => backTo(last.ordered)}>
              {say('site.backTo', { number: checkpoints.length })}
            </button>
          )}
        </>
      )}
      <button
        type='button'
        className='btn wide'
        onClick={() => {
          // A scored run is asked once more before it ends.
          if (purpose === 'practise') finish()
          goTo('debrief')
        }}
      >
        {say('site.finish')}
      </button>
    </div>
  )
}
