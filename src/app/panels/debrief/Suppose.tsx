/** Without it / with it: take any fitted thing away, change soil or relay; the same moment is solved again at once. */
import { useState } from 'react'
import { useStore } from 'zustand'
import { amperes, plain, say, seconds, volts } from '../../../text'
import { gradeStore, suppose } from '../../stores/gradeStore'
import type { Graded, Supposition } from '../../workers/grading'
import { Working } from '../livening/Working'
import { VerdictWords, pathWords, personName } from '../livening/ExposureRow'
import { worstByPerson } from '../livening/verdicts'
import { useSpeaker } from '../useSpeaker'
import { thingKey, thingWords } from './WhatHeld'

const soils = [0.25, 0.5, 1, 2, 4, 10]
const relays = [0.5, 1, 2, 10]
const asItWas: Supposition = { away: [], soil: 1, relay: 1 }

export function Suppose({ graded, onBack }: { graded: Graded; onBack: () => void }) {
  const speaker = useSpeaker()
  const supposed = useStore(gradeStore, (grade) => grade.supposed)
  const [now, setNow] = useState(asItWas)
  const change = (part: Partial<Supposition>) => {
    const next = { ...now, ...part }
    setNow(next)
    suppose(next)
  }
  const drawn = graded.drawn
  if (!drawn) return null
  const before = worstByPerson(drawn.exposures)
  const after = worstByPerson((supposed ?? drawn).exposures)
  const shown = supposed ?? drawn
  const people = [...new Set([...before, ...after].map((it) => it.person))]
  return (
    <main className='stack suppose'>
      <div className='livehead'>
        <h1 className='head'>{say('suppose.title')}</h1>
        <button type='button' className='btn go' onClick={onBack} autoFocus>
          {say('suppose.back')}
        </button>
      </div>
      <Working />
      <div className='cols supposecols grow'>
        <section className='stack scroll' tabIndex={0} aria-label={say('suppose.things')}>
          <h2 className='sec'>{say('suppose.things')}</h2>
          {graded.fitted.map((thing) => {
            const isOn = !now.away.some((it) => thingKey(it) === thingKey(thing))
            return (
              <button
                key={thingKey(thing)}
                type='button'
                className='pick'
                role='checkbox'
                aria-checked={isOn}
                onClick={() =>
                  change({
                    away: isOn ? [...now.away, thing] : now.away.filter((it) => thingKey(it) !== thingKey(thing)),
                  })
                }
              >
                <span className='box' />
                {thingWords(thing, speaker)}
              </button>
            )
          })}
          <Factors label={say('suppose.soil')} values={soils} chosen={now.soil} onChoose={(soil) => change({ soil })} />
          <Factors
            label={say('suppose.relay')}
            values={relays}
            chosen={now.relay}
            onChoose={(relay) => change({ relay })}
          />
        </section>
        <section className='stack scroll' tabIndex={0} aria-label={say('suppose.numbers')}>
          <h2 className='sec'>
            {say('suppose.numbers')}
            <span className='q'>
              {say('suppose.line', {
                rise: volts(shown.siteRise),
                current: amperes(shown.liveCurrent),
                duration: shown.clearedBy === 'nothing' ? say('exposure.uncleared') : seconds(shown.duration),
              })}
            </span>
          </h2>
          <table>
            <thead>
              <tr>
                <th>{say('people.person')}</th>
                <th>{say('people.path')}</th>
                <th className='num'>{say('suppose.before')}</th>
                <th className='num'>{say('suppose.after')}</th>
                <th>{say('people.verdict')}</th>
              </tr>
            </thead>
            <tbody>
              {people.map((person) => {
                const [was, is] = [before.find((it) => it.person === person), after.find((it) => it.person === person)]
                const shownExposure = is ?? was!
                return (
                  <tr key={person}>
                    <th scope='row'>
                      <b>{personName(speaker, person)}</b>
                    </th>
                    <td>{pathWords(speaker, shownExposure)}</td>
                    <td className='num'>{was ? amperes(was.bodyCurrent) : '–'}</td>
                    <td className='num'>{is ? amperes(is.bodyCurrent) : '–'}</td>
                    <td>{is ? <VerdictWords exposure={is} /> : say('held.nothing')}</td>
                  </tr>
                )
              })}
            </tbody>
          </table>
        </section>
      </div>
    </main>
  )
}

interface FactorsProps {
  readonly label: string
  readonly values: readonly number[]
  readonly chosen: number
  readonly onChoose: (value: number) => void
}

function Factors({ label, values, chosen, onChoose }: FactorsProps) {
  return (
    <>
      <h2 className='sec gap'>{label}</h2>
      <div className='seg' role='radiogroup' aria-label={label}>
        {values.map((value) => (
          <button
            key={value}
            type='button'
            role='radio'
            className='btn'
            aria-checked={value === chosen}
            onClick={() => onChoose(value)}
          >
            × {plain(value, 2)}
          </button>
        ))}
      </div>
    </>
  )
}
