/**
 * How much each thing mattered to what came alive; where nothing did, to the worst that could have. A bar per thing, to
 * the right what it took off, to the left what it added; then how sure that is. Both are worked out beside the page and
 * appear when they are there.
 */
import { useEffect, useMemo, useState } from 'react'
import { useStore } from 'zustand'
import { type Belief, type Chance, type Exposure, type Shares, type Unsolvable, isUnsolvable } from '../../../engine'
import { type Speaker, amperes, heartWords, countedPercent, percent, say, timeOfDay, volts } from '../../../text'
import { matteredStore, stopWeighing, weighThings } from '../../stores/matteredStore'
import type { Graded } from '../../workers/grading'
import type { WeighedInstant } from '../../workers/mattered'
import { cornerWords, liveningWords } from '../livening/caseWords'
import { personName } from '../livening/ExposureRow'
import { materials, thingKey, thingWords } from './WhatHeld'

interface MatteredProps {
  readonly graded: Graded
  readonly belief: Belief
  readonly speaker: Speaker
}

export function Mattered({ graded, belief, speaker }: MatteredProps) {
  const { worst, shares, progress, chance, failure } = useStore(matteredStore)
  const { sweep, visible } = graded.result
  const happened = visible?.exposures ?? nothing
  const persons = [...new Set([...happened, ...(happened.length > 0 ? [] : sweep)].map((it) => it.person))]
  const [chosen, setChosen] = useState<string | null>(null)
  const weighed = useMemo(() => {
    const isWanted = (it: { readonly person: string }) => chosen === null || it.person === chosen
    return { happened: happened.filter(isWanted), worst: sweep.filter(isWanted) }
  }, [happened, sweep, chosen])
  useEffect(() => {
    weighThings(weighed)
    return stopWeighing
  }, [weighed])
  return (
    <div className='mattered'>
      <h2 className='sec gap'>{say('mattered.title')}</h2>
      {persons.length > 1 && (
        <div className='seg' role='radiogroup' aria-label={say('mattered.who')}>
          {persons.map((each) => (
            <button
              key={each}
              type='button'
              role='radio'
              className='btn'
              aria-checked={each === (chosen ?? worst?.whom.person)}
              onClick={() => setChosen(each)}
            >
              {personName(speaker, each)}
            </button>
          ))}
        </div>
      )}
      {failure && <p className='crit'>{say('working.failed', { reason: failure })}</p>}
      {worst === null && <p className='q'>{say('mattered.none')}</p>}
      {worst && <p>{whenWords(worst, belief, speaker)}</p>}
      {shares === null && worst !== null && !failure && <p className='q'>{say('mattered.working')}</p>}
      {shares && (isUnsolvable(shares) ? <Unsolved {...shares} /> : <SharedOut shares={shares} speaker={speaker} />)}
      {progress && (
        <p className='q' role='status'>
          {say('chance.working', progress)}
        </p>
      )}
      {chance && (isUnsolvable(chance) ? <Unsolved {...chance} /> : <HowSure chance={chance} />)}
    </div>
  )
}

/** One and the same each time, so that nothing is weighed anew. */
const nothing: readonly Exposure[] = []

function whenWords({ at, whom, didHappen }: WeighedInstant, belief: Belief, speaker: Speaker) {
  return say(didHappen ? 'mattered.happened' : 'mattered.when', {
    time: timeOfDay(belief.sheet.startsAt + at).slice(0, 5),
    what: liveningWords(whom.livening, speaker),
    who: `${personName(speaker, whom.person)}: ${speaker.say(`path.${whom.path}`)}`,
  })
}

function Unsolved({ node, reason }: Unsolvable) {
  return <p className='crit'>{say('mattered.unsolved', { node, reason: say(`unsolved.${reason}`) })}</p>
}

function SharedOut({ shares, speaker }: { shares: Shares; speaker: Speaker }) {
  const inUnit = shares.person === 'bystander' ? volts : amperes
  const ordered = [...shares.shares].sort((a, b) => b.share - a.share)
  const most = Math.max(...ordered.map((it) => Math.abs(it.share)), 0)
  const counted = ordered.filter((it) => Math.abs(it.share) > most * leastShown)
  const left = Math.min(0, ...counted.map((it) => it.share))
  const right = Math.max(0, ...counted.map((it) => it.share))
  const names = (things: readonly Shares['undivided'][number][]): string =>
    things.map((it) => thingWords(it, speaker)).join('; ')
  const between = { none: inUnit(shares.withNone), all: inUnit(shares.withAll) }
  const rest = ordered.filter((it) => !counted.includes(it)).map((it) => it.thing)
  const hasTieAdded = counted.some(({ thing, share }) => share < 0 && (thing.kind === 'lead' || thing.kind === 'bond'))
  return (
    <>
      <p>
        {shares.corner === 'declared'
          ? say('mattered.between', between)
          : say('mattered.betweenIn', { ...between, corner: cornerWords(shares.corner, speaker) })}
        {shares.layers === 'fail' && ` ${say('mattered.fails')}`}
      </p>
      {counted.length > 0 && (
        <table className='held'>
          <thead>
            <tr>
              <th>{say('mattered.thing')}</th>
              <th>{say('mattered.bar')}</th>
              <th className='num'>{say('mattered.took')}</th>
            </tr>
          </thead>
          <tbody>
            {counted.map(({ thing, share }) => (
              <tr key={thingKey(thing)}>
                <td>{thingWords(thing, speaker)}</td>
                <td>
                  <ShareBar share={share} left={left} right={right} kind={thing.kind} />
                </td>
                <td className='num'>{share < 0 ? say('mattered.added', { value: inUnit(-share) }) : inUnit(share)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {hasTieAdded && isThroughHands(shares.path) && <p>{say('mattered.ties')}</p>}
      {rest.length > 0 && <p className='q'>{say('mattered.nothing', { things: names(rest) })}</p>}
      {shares.undivided.length > 0 && (
        <p className='q'>{say('mattered.undivided', { things: names(shares.undivided) })}</p>
      )}
      <p className='note'>{say('mattered.how')}</p>
    </>
  )
}

/** Not a pace on the ground: there the lead carries to the earth what is stepped across, and nothing is bare. */
const isThroughHands = (path: string): boolean => path.startsWith('hand-')

/** Less than this part of the largest is no difference that anybody could act on. */
const leastShown = 0.001

/** From the line where nothing is: to the right taken off, to the left added. */
function ShareBar({ share, left, right, kind }: { share: number; left: number; right: number; kind: string }) {
  const width = 160
  const scale = (width - 2) / (right - left || 1)
  const zero = 1 - left * scale
  const long = Math.max(1, Math.abs(share) * scale)
  return (
    <svg viewBox={`0 0 ${width} 16`} width={width} height='16' aria-hidden='true'>
      <rect
        x={share < 0 ? zero - long : zero}
        y='3'
        width={long}
        height='10'
        className='d-thin'
        style={{ fill: share < 0 ? 'var(--live)' : (materials[kind] ?? 'var(--field)') }}
      />
      <path d={`M${zero} 0v16`} className='d-wire' />
    </svg>
  )
}

function HowSure({ chance }: { chance: Chance }) {
  const inUnit = chance.person === 'bystander' ? volts : amperes
  const { judged, above, aboveIfLayersFail, fibrillation, unsolved } = chance
  const mayFail = aboveIfLayersFail.count > above.count
  return (
    <>
      <h3 className='sec gap'>{say('chance.title')}</h3>
      <p>
        {say('chance.judged', { low: inUnit(judged.low), middle: inUnit(judged.middle), high: inUnit(judged.high) })}
      </p>
      <p>{say('chance.above', { count: above.count, of: above.of, ...inPercent(above) })}</p>
      {mayFail && <p>{say('chance.fails', inPercent(aboveIfLayersFail))}</p>}
      <p>
        {heartWords(fibrillation)}
        {fibrillation.beyondRange && ` ${say('chance.beyond')}`}
      </p>
      {unsolved > 0 && <p className='crit'>{say('chance.unsolved', { count: unsolved })}</p>}
      <p className='note'>{say('chance.note')}</p>
    </>
  )
}

const ends = ({ low, high }: { readonly low: number; readonly high: number }) => ({
  low: percent(low),
  high: percent(high),
})

const inPercent = (it: Chance['above']) => ({ share: countedPercent(it.share), ...ends(it) })
