/** What the tape reads, in words and figures, and how its ends are held: by picking, by the list, or by figures. */
import { useState } from 'react'
import { useStore } from 'zustand'
import { type Speaker, metres, say, spotWords } from '../../../text'
import type { Spot } from '../../stores/aimStore'
import { measureTape } from '../../stores/measureTape'
import { type TapeEnd, holdTape, putTapeAway, tapeStore } from '../../stores/tapeStore'
import { useBelief } from '../useBelief'
import { useSpeaker } from '../useSpeaker'
import { thingName } from './ActionSlip'
import { SpotFields } from './SpotFields'

export function TapeSlip() {
  const { isOut, ends } = useStore(tapeStore)
  const belief = useBelief()
  const speaker = useSpeaker()
  const [spot, setSpot] = useState<Spot | null>(null)
  if (!isOut) return null
  const nameOf = (end: TapeEnd) => endName(speaker, belief, end)
  const measured = measureTape(belief, ends)
  const words = measured
    ? say(measured.up < 0 ? 'tape.readsDown' : 'tape.reads', {
        over: metres(measured.over),
        up: metres(Math.abs(measured.up)),
        straight: metres(measured.straight),
      })
    : say(ends.length === 2 ? 'tape.nowhere' : ends.length === 1 ? 'tape.second' : 'tape.first')
  return (
    <section className='tapeslip' aria-label={say('tape.title')}>
      <p aria-live='polite' data-tape>
        {ends.length > 0 && <b>{ends.map(nameOf).join(say('tape.to'))}: </b>}
        {words}
      </p>
      <button type='button' className='btn plain' onClick={putTapeAway}>
        {say('tape.away')}
      </button>
      <details>
        <summary>{say('tape.figures')}</summary>
        <form
          className='taperow'
          onSubmit={(event) => {
            event.preventDefault()
            if (spot) holdTape({ kind: 'ground', at: spot })
          }}
        >
          <SpotFields points={spot ? [spot] : []} most={1} onChange={([at]) => setSpot(at ?? null)} />
          <button type='submit' className='btn plain'>
            {say('tape.here')}
          </button>
        </form>
      </details>
    </section>
  )
}

const endName = (speaker: Speaker, belief: ReturnType<typeof useBelief>, end: TapeEnd): string =>
  end.kind === 'ground' ? spotWords(end.at) : thingOrPerson(speaker, belief, end.id)

const thingOrPerson = (speaker: Speaker, belief: ReturnType<typeof useBelief>, id: string): string =>
  belief.persons.some((it) => it.id === id) ? speaker.say(`person.${id}`) : thingName(speaker, belief, id)
