/** Questions and talks of the briefing, each an act of the chosen person with its own entries. */
import { useState } from 'react'
import { useStore } from 'zustand'
import type { Belief } from '../../../engine'
import { type Speaker, say, timeOfDay } from '../../../text'
import { type Afford, affordsOf } from '../../stores/affords'
import { type Doing, jobStore } from '../../stores/jobStore'
import { choosePersons, viewStore } from '../../stores/viewStore'
import { ActForm } from '../site/ActForm'
import { actName } from '../site/ActionSlip'
import { crewInOrder } from '../site/crewInOrder'
import { lettersOf } from '../site/lettersOf'
import { giveDraft } from '../site/giving'

/** A to Z, as on every sheet: no order is hinted at. */
const briefingActs = [
  'answer-livening',
  'check-crew',
  'choose-earths',
  'hold-briefing',
  'read-order',
  'read-weather',
  'sign-on',
]

export function Briefing({ belief, speaker }: { belief: Belief; speaker: Speaker }) {
  const persons = useStore(viewStore, (view) => view.persons)
  const notices = useStore(jobStore, (job) => job.notices)
  const busy = useStore(jobStore, (job) => job.busy)
  const [open, setOpen] = useState<string | null>(null)
  const who = persons[0] ?? crewInOrder(belief)[0]!.id
  const affords = affordsOf(who, null)
  const shown = briefingActs.flatMap((act) => affords.filter((it) => it.act === act))
  const give = (afford: Afford, values = {}) => {
    setOpen(null)
    giveDraft({ do: afford.act, values }, persons)
  }
  return (
    <>
      <h2 className='sec'>
        {say('job.briefing')}
        <span className='q'>{say('job.briefingNote')}</span>
      </h2>
      <div className='seg crewseg' role='group' aria-label={say('site.crew')}>
        {crewInOrder(belief).map((person) => (
          <button
            key={person.id}
            type='button'
            className='btn'
            aria-pressed={persons.includes(person.id)}
            onClick={() => choosePersons([person.id])}
          >
            {lettersOf(belief, person.id)}
          </button>
        ))}
        <button
          type='button'
          className='btn'
          onClick={() => choosePersons(crewInOrder(belief).map((person) => person.id))}
        >
          {say('job.all')}
        </button>
      </div>
      <div className='slip inline'>
        {[...shown]
          .sort((a, b) => (actName(speaker, a) < actName(speaker, b) ? -1 : 1))
          .map((afford) =>
            open === afford.act ? (
              <ActForm
                key={afford.key}
                afford={afford}
                title={actName(speaker, afford)}
                speaker={speaker}
                onGive={(values) => give(afford, values)}
              />
            ) : (
              <button
                key={afford.key}
                type='button'
                className='act'
                data-act={afford.key}
                onClick={() => (afford.fields.length > 0 ? setOpen(afford.act) : give(afford))}
              >
                <span className='nm'>{actName(speaker, afford)}</span>
                <span className='q'>
                  {[orderedWords(belief, busy, afford.act), doneWords(belief, afford.act)].filter(Boolean).join('; ')}
                </span>
              </button>
            ),
          )}
      </div>
      <p className='note' role='status'>
        {notices.map((notice) => speaker.say(`refusal.${notice.code.split('/')[1]}`, notice.values)).join(' ')}
      </p>
    </>
  )
}

/** Who is at it, and until when: an order that stands is seen before its act has ended. */
function orderedWords(belief: Belief, busy: readonly Doing[], act: string): string {
  return busy
    .filter((it) => it.act === act)
    .map(({ who, end }) =>
      say('job.ordered', { who: lettersOf(belief, who), time: timeOfDay(belief.sheet.startsAt + end) }),
    )
    .join('; ')
}

/** How often it was done, as the log has it. */
function doneWords(belief: Belief, act: string): string {
  const said = act === 'read-weather' ? 'weather.read' : `did.${act}`
  const count = belief.evidence.filter((line) => line.says === said).length
  return count === 0 ? '' : say('job.done', { count })
}
