/**
 * How much each fitted thing mattered at that moment: the same instant solved again with that one thing away. A bar per
 * thing, as wide as the body current without it; the table says the same in figures.
 */
import { useState } from 'react'
import type { Exposure } from '../../../engine'
import { type Speaker, amperes, say, volts } from '../../../text'
import type { Graded } from '../../workers/grading'
import { VerdictWords, personName } from '../livening/ExposureRow'

type Without = Graded['without'][number]

export function WhatHeld({ graded, speaker }: { graded: Graded; speaker: Speaker }) {
  const persons = [...new Set(graded.without.flatMap((it) => it.persons.map((person) => person.person)))]
  const [chosen, setChosen] = useState<string | null>(null)
  const person = chosen ?? mostChanged(graded) ?? persons[0]
  if (!person) return null
  const rows = graded.without.flatMap((it) => {
    const found = it.persons.find((each) => each.person === person)
    return found ? [{ thing: it.thing, ...found }] : []
  })
  const most = Math.max(...rows.map((row) => judged(row.withoutIt)), 1e-9)
  const changed = rows.filter(isChange)
  const idle = rows.filter((row) => !isChange(row))
  return (
    <>
      <h2 className='sec gap'>
        {say('held.title')}
        <span className='q'>{say('held.note')}</span>
      </h2>
      <div className='seg' role='radiogroup' aria-label={say('held.who')}>
        {persons.map((each) => (
          <button
            key={each}
            type='button'
            role='radio'
            className='btn'
            aria-checked={each === person}
            onClick={() => setChosen(each)}
          >
            {personName(speaker, each)}
          </button>
        ))}
      </div>
      {changed.length > 0 && (
        <table className='held'>
          <thead>
            <tr>
              <th>{say('held.without')}</th>
              <th>{say('held.share')}</th>
              <th className='num'>{say(person === 'bystander' ? 'people.voltage' : 'people.body')}</th>
              <th>{say('people.verdict')}</th>
            </tr>
          </thead>
          <tbody>
            {changed.map((row) => (
              <tr key={thingKey(row.thing)}>
                <td>{thingWords(row.thing, speaker)}</td>
                <td>
                  <Bar share={judged(row.withoutIt) / most} before={judged(row.withIt) / most} kind={row.thing.kind} />
                </td>
                <td className='num'>{reaching(person, row.withoutIt)}</td>
                <td>
                  {row.withoutIt ? (
                    <VerdictWords exposure={row.withoutIt} />
                  ) : (
                    <span className='q'>{say('held.nothing')}</span>
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {idle.length > 0 && (
        <p className='q'>
          {say('mattered.nothing', { things: idle.map(({ thing }) => thingWords(thing, speaker)).join('; ') })}
        </p>
      )}
    </>
  )
}

/** The public is judged by volts, the crew by what flows through the body. */
const reaching = (person: string, exposure: Exposure | null): string =>
  person === 'bystander' ? volts(exposure?.judged ?? 0) : amperes(exposure?.bodyCurrent ?? 0)

const judged = (exposure: Exposure | null): number => (exposure ? exposure.judged / exposure.limit : 0)

/** Less than a hundredth is no difference that anybody could act on. */
function isChange({ withIt, withoutIt }: Without['persons'][number]): boolean {
  const [before, after] = [judged(withIt), judged(withoutIt)]
  return Math.abs(after - before) > 0.01 * Math.max(before, after)
}

/** The person for whom taking one thing away changes most. */
function mostChanged(graded: Graded): string | undefined {
  const changes = graded.without.flatMap((it) =>
    it.persons.map((each) => ({ person: each.person, by: judged(each.withoutIt) - judged(each.withIt) })),
  )
  return changes.sort((a, b) => b.by - a.by)[0]?.person
}

export const thingKey = (thing: Without['thing']): string =>
  `${thing.kind}/${thing.item ?? ''}${thing.kind === 'clamp' ? `/${thing.end}` : ''}`

export function thingWords(thing: Without['thing'], speaker: Speaker): string {
  const item = thing.item ?? ''
  return thing.kind === 'clamp'
    ? speaker.say('fitted.clamp', { item, end: speaker.say(`end.${thing.end}`) })
    : speaker.say(`fitted.${thing.kind}`, { item })
}

export const materials: Readonly<Record<string, string>> = {
  lead: 'var(--m-copper)',
  clamp: 'var(--m-aluminium)',
  bond: 'var(--m-copper)',
  rod: 'var(--m-copper)',
  'isolation-earth': 'var(--m-copper)',
  cover: 'var(--m-rubber)',
  guard: 'var(--m-rubber)',
  boots: 'var(--m-rubber)',
  gloves: 'var(--m-rubber)',
  overshoes: 'var(--m-rubber)',
  platform: 'var(--m-rubber)',
  barrier: 'var(--field)',
}

/** As drawn on the debrief: width without the thing, a tick where it stood with it. */
function Bar({ share, before, kind }: { share: number; before: number; kind: string }) {
  return (
    <svg viewBox='0 0 120 16' width='120' height='16' aria-hidden='true'>
      <path d='M0 15H120' className='d-hair' />
      <rect
        x='0'
        y='3'
        width={Math.max(1, Math.min(1, share) * 119)}
        height='10'
        className='d-thin'
        style={{ fill: materials[kind] ?? 'var(--field)' }}
      />
      <path d={`M${Math.min(1, before) * 119} 0v16`} className='d-wire' />
    </svg>
  )
}
