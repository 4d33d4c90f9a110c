/** Marks: gates first, then elements, and whose rules they are. What the tool cannot judge is listed for a person. */
import { type Speaker, say } from '../../../text'
import type { Graded } from '../../workers/grading'

export function Marks({ graded, speaker }: { graded: Graded; speaker: Speaker }) {
  const { marks, notJudged, gates } = graded.result
  return (
    <>
      <h2 className='sec gap'>
        {say('marks.title')}
        <span className='q'>{say(gates.criticals + gates.above === 0 ? 'marks.gatesKept' : 'marks.gatesNot')}</span>
      </h2>
      <table>
        <thead>
          <tr>
            <th>{say('marks.element')}</th>
            <th className='num'>{say('severity.critical')}</th>
            <th className='num'>{say('severity.major')}</th>
            <th className='num'>{say('severity.minor')}</th>
            <th>{say('marks.state')}</th>
          </tr>
        </thead>
        <tbody>
          {marks.map((mark) => (
            <tr key={mark.element}>
              <td>{speaker.say(`element.${mark.element}`)}</td>
              <td className='num'>{mark.criticals}</td>
              <td className='num'>{mark.majors}</td>
              <td className='num'>{mark.minors}</td>
              <td className={mark.state === 'not met' ? 'crit' : undefined}>
                {speaker.say(`mark.${mark.state.replace(' ', '-')}`)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {speaker.has('pack.caution') && <p className='note packcaution'>{speaker.say('pack.caution')}</p>}
      <h2 className='sec gap'>{say('marks.notJudged')}</h2>
      <ul className='note'>
        {notJudged.map((it) => (
          <li key={it}>{speaker.has(`not-judged.${it}`) ? speaker.say(`not-judged.${it}`) : it}</li>
        ))}
      </ul>
    </>
  )
}
