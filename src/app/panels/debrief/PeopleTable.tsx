/** Each person: the worst path and its numbers at the livening that struck, or at the worst that could have. */
import { type Speaker, amperes, exposureTime, say, volts } from '../../../text'
import type { Graded } from '../../workers/grading'
import { VerdictWords, pathWords, personName } from '../livening/ExposureRow'
import { worstByPerson } from '../livening/verdicts'

export function PeopleTable({ graded, speaker }: { graded: Graded; speaker: Speaker }) {
  const rows = worstByPerson(graded.drawn?.exposures ?? [])
  return (
    <table className='people'>
      <thead>
        <tr>
          <th>{say('people.person')}</th>
          <th>{say('people.path')}</th>
          <th className='num'>{say('people.voltage')}</th>
          <th className='num'>{say('people.body')}</th>
          <th className='num'>{say('people.time')}</th>
          <th>{say('people.verdict')}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((it) => (
          <tr key={it.person}>
            <th scope='row'>
              <b>{personName(speaker, it.person)}</b>
            </th>
            <td>{pathWords(speaker, it)}</td>
            <td className='num'>{volts(it.prospectiveVoltage)}</td>
            <td className='num'>{amperes(it.bodyCurrent)}</td>
            <td className='num'>{exposureTime(it)}</td>
            <td>
              <VerdictWords exposure={it} />
            </td>
          </tr>
        ))}
        {rows.length === 0 && (
          <tr>
            <td colSpan={6} className='q'>
              {say('people.nobody')}
            </td>
          </tr>
        )}
      </tbody>
    </table>
  )
}
