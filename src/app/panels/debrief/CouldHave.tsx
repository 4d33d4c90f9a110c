/** What did not happen, but could have: every livening at every moment of the run, the worst of them first. */
import type { Belief } from '../../../engine'
import { type Speaker, amperes, say, timeOfDay, volts } from '../../../text'
import type { Graded } from '../../workers/grading'
import { liveningWords } from '../livening/caseWords'
import { VerdictWords, pathWords, personName } from '../livening/ExposureRow'
import { caseLine } from './caseLine'

export function CouldHave({ graded, belief, speaker }: { graded: Graded; belief: Belief; speaker: Speaker }) {
  const { sweep, swept, unsolved } = graded.result
  const ordered = [...sweep].sort((a, b) => rank[b.verdict] - rank[a.verdict] || largest(b) - largest(a))
  const { worst } = graded
  return (
    <>
      <h2 className='sec gap'>{say('could.title')}</h2>
      {worst ? (
        <p>
          {say('could.sentence', {
            when: caseLine(worst.of, belief, speaker),
            who: personName(speaker, worst.exposure.person),
            path: pathWords(speaker, worst.exposure),
            voltage: volts(worst.exposure.prospectiveVoltage),
            current: amperes(worst.exposure.bodyCurrent),
            limit: (worst.exposure.person === 'bystander' ? volts : amperes)(worst.exposure.limit),
          })}{' '}
          <VerdictWords exposure={worst.exposure} />
          {worst.layers === 'fail' && ` ${say('mattered.fails')}`}
        </p>
      ) : (
        <p className='q'>{say('could.nothing')}</p>
      )}
      <details>
        <summary>{say('could.table')}</summary>
        <table>
          <thead>
            <tr>
              <th>{say('people.person')}</th>
              <th>{say('people.path')}</th>
              <th>{say('could.at')}</th>
              <th>{say('could.what')}</th>
              <th className='num'>{say('people.body')}</th>
              <th>{say('could.limit')}</th>
            </tr>
          </thead>
          <tbody>
            {ordered.slice(0, 30).map((it) => (
              <tr key={`${it.person}${it.path}`}>
                <td>{personName(speaker, it.person)}</td>
                <td>{pathWords(speaker, it.exposure)}</td>
                <td className='n'>{timeOfDay(belief.sheet.startsAt + it.at).slice(0, 5)}</td>
                <td>{liveningWords(it.livening, speaker)}</td>
                <td className='num'>{amperes(it.exposure.bodyCurrent)}</td>
                <td>{speaker.say(`limit.${it.verdict}`)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
      <p className='note'>
        {say('could.swept', { states: swept.states, livenings: swept.livenings, corners: swept.corners })}
      </p>
      {unsolved.length > 0 && (
        <p className='crit'>
          {say('could.unsolved', {
            count: unsolved.length,
            node: unsolved[0]!.node,
            reason: say(`unsolved.${unsolved[0]!.reason}`),
          })}
        </p>
      )}
    </>
  )
}

const rank = { below: 0, marginal: 1, above: 2 } as const

/** Of all corners. */
const largest = ({ ratios }: Graded['result']['sweep'][number]): number => Math.max(...Object.values(ratios))
