/** What reached one person: figure with the path drawn end to end, verdict in words and strokes, four figures. */
import type { Exposure } from '../../../engine'
import { type Speaker, amperes, exposureTime, say, verdictWords, volts } from '../../../text'
import { Figure } from '../drawing/Figure'
import { Tally } from '../drawing/Marks'
import { drawnPath, strokesOf } from './verdicts'

/** By a second of the livening: what has reached the person so far; null: nothing. */
export interface SoFar {
  readonly second: string
  readonly exposure: Exposure | null
}

interface RowProps {
  readonly exposure: Exposure
  readonly soFar?: SoFar | null
  readonly speaker: Speaker
}

export function ExposureRow({ exposure, soFar, speaker }: RowProps) {
  const { path, posture } = drawnPath(exposure)
  const isHarm = strokesOf(exposure) >= 2
  return (
    <div className='exposure'>
      <svg width='70' height='120' viewBox='0 0 70 120' aria-hidden='true'>
        <Figure
          x={posture === 'reaching' ? 20 : 35}
          y={114}
          size={posture === 'reaching' ? 54 : 64}
          posture={posture}
          path={path}
          pathColour={isHarm ? 'var(--live)' : 'var(--ink)'}
        />
      </svg>
      <div>
        <h3>{personName(speaker, exposure.person)}</h3>
        <p className='q'>{pathWords(speaker, exposure)}</p>
        <VerdictWords exposure={exposure} />
        <dl className='figures'>
          <dt>{say('exposure.prospective')}</dt>
          <dd className='num'>{volts(exposure.prospectiveVoltage)}</dd>
          <dt>{say('exposure.body')}</dt>
          <dd className='num'>{amperes(exposure.bodyCurrent)}</dd>
          <dt>{say(exposure.person === 'bystander' ? 'exposure.limitVolts' : 'exposure.limit')}</dt>
          <dd className='num'>{exposure.person === 'bystander' ? volts(exposure.limit) : amperes(exposure.limit)}</dd>
          <dt>{say('exposure.time')}</dt>
          <dd className='num'>{exposureTime(exposure)}</dd>
        </dl>
        {soFar && <SoFarLine {...soFar} />}
        {exposure.layer && (
          <p className='note'>
            {speaker.say(`layer.${exposure.layer.did}`, { item: exposure.layer.item, voltage: exposure.layer.voltage })}
          </p>
        )}
      </div>
    </div>
  )
}

export const personName = (speaker: Speaker, id: string): string =>
  id === 'bystander' ? say('exposure.bystander') : speaker.say(`person.${id}`)

export const pathWords = (speaker: Speaker, exposure: Exposure): string => speaker.say(`path.${exposure.path}`)

export function VerdictWords({ exposure }: { exposure: Exposure }) {
  const strokes = strokesOf(exposure)
  return (
    <span className={strokes >= 3 ? 'verdict crit' : 'verdict'}>
      <Tally strokes={strokes} />
      {verdictWords(exposure)}
    </span>
  )
}

function SoFarLine({ second, exposure }: SoFar) {
  return (
    <p className='sofar'>
      <span className='q'>{say('livening.soFar', { second })}</span>{' '}
      {exposure ? (
        <>
          {amperes(exposure.bodyCurrent)}, {exposureTime(exposure)} <VerdictWords exposure={exposure} />
        </>
      ) : (
        say('livening.soFarNothing')
      )}
    </p>
  )
}
