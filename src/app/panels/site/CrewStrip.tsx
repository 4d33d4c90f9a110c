/** Who is where, with what in the hands, wearing what, busy with what. Pressing marks who gets the next order. */
import type { KeyboardEvent } from 'react'
import { useStore } from 'zustand'
import type { Belief, PersonBelief } from '../../../engine'
import { type Speaker, plain, say, timeOfDay } from '../../../text'
import { type Doing, jobStore } from '../../stores/jobStore'
import { choosePersons, markPerson, togglePerson, viewStore } from '../../stores/viewStore'
import { Figure } from '../drawing/Figure'
import { hasBoots, postureOf } from '../drawing/viewOfSite'
import { useBelief } from '../useBelief'
import { useSpeaker } from '../useSpeaker'
import { crewInOrder } from './crewInOrder'

export function CrewStrip() {
  const belief = useBelief()
  const speaker = useSpeaker()
  const chosen = useStore(viewStore, (view) => view.persons)
  const busy = useStore(jobStore, (job) => job.busy)
  const crew = crewInOrder(belief)
  return (
    <div className='crew' role='group' aria-label={say('site.crew')} onKeyDown={(event) => walk(event, crew)}>
      {crew.map((person, i) => (
        <button
          key={person.id}
          type='button'
          aria-pressed={chosen.includes(person.id)}
          tabIndex={person.id === chosen[0] ? 0 : -1}
          aria-keyshortcuts={String(i + 1)}
          onClick={(event) => {
            if (event.shiftKey || event.ctrlKey || event.metaKey) togglePerson(person.id)
            else choosePersons([person.id])
          }}
        >
          <Portrait person={person} belief={belief} />
          <span>
            <span className='nm'>
              {speaker.say(`person.${person.id}`)}
              {isYou(person, belief) && <span className='q'> ({say('site.you')})</span>}
            </span>
            <br />
            {whereabouts(person, speaker)}
            <br />
            <span className='q'>{carried(person, speaker)}</span>
            <Busy doing={busy.find((it) => it.who === person.id)} belief={belief} speaker={speaker} />
          </span>
        </button>
      ))}
    </div>
  )
}

/** Whoever is in charge now: of two who can be, one. */
const isYou = ({ id, role }: PersonBelief, { inCharge }: Belief): boolean =>
  role === 'person-in-charge' && (inCharge === null || inCharge === id)

/** One tab stop: left and right go to the next person and choose them; with Shift one more is marked. */
function walk(event: KeyboardEvent<HTMLElement>, crew: readonly PersonBelief[]): void {
  const by = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0
  const buttons = [...event.currentTarget.querySelectorAll('button')]
  const here = buttons.findIndex((button) => button === event.target)
  const next = crew[here + by]
  if (by === 0 || here < 0 || !next) return
  event.preventDefault()
  if (event.shiftKey) markPerson(next.id)
  else choosePersons([next.id])
  buttons[here + by]?.focus()
}

function Portrait({ person, belief }: { person: PersonBelief; belief: Belief }) {
  const posture = postureOf(belief, person)
  const isAloft = posture !== 'standing' && posture !== 'watching'
  return (
    <svg width='34' height='56' viewBox='0 0 34 56' aria-hidden='true'>
      <Figure
        x={isAloft ? 6 : 17}
        y={54}
        size={isAloft ? 25 : 29}
        posture={posture}
        hasBoots={hasBoots(belief, person)}
      />
    </svg>
  )
}

function whereabouts({ place, strapped, onMat, isHere, isHurt }: PersonBelief, speaker: Speaker): string {
  if (!isHere) return say('where.notHere')
  if (isHurt) return say('where.hurt')
  if (place.kind === 'switch') return speaker.say(onMat ? 'where.switch-mat' : 'where.switch', { switch: place.id })
  if (place.kind === 'pole') return speaker.say(`where.${place.station}${strapped ? '-strapped' : ''}`)
  if (place.kind === 'bucket') return speaker.say('where.bucket')
  const { x, y } = place.at
  const side = (value: number, plus: string, minus: string) =>
    Math.abs(value) < 0.05 ? '' : `${plain(Math.abs(value), 1)}\u00a0m ${value > 0 ? plus : minus}`
  return speaker.say('where.ground', {
    place: [side(x, say('where.east'), say('where.west')), side(y, say('where.north'), say('where.south'))]
      .filter(Boolean)
      .join(', '),
  })
}

function carried({ holds, wears }: PersonBelief, speaker: Speaker): string {
  const hands = holds.length === 0 ? say('site.handsEmpty') : holds.join(', ')
  const worn = wears.length === 0 ? '' : ` ${speaker.say('site.wears', { items: wears.join(', ') })}`
  return `${say('site.hands', { items: hands })}${worn}`
}

/** Its line is kept free while there is nothing to say: what lies below does not move at every order. */
function Busy({ doing, belief, speaker }: { doing: Doing | undefined; belief: Belief; speaker: Speaker }) {
  return (
    <>
      <br />
      <span className={doing ? 'busy' : undefined}>
        {doing
          ? speaker.say('site.busyUntil', {
              act: speaker.say(`action.${doing.act}`),
              time: timeOfDay(belief.sheet.startsAt + doing.end),
            })
          : '\u00a0'}
      </span>
    </>
  )
}
