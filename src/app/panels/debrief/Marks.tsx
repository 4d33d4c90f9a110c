/** Marks: gates first, then elements, and whose rules they are. What the tool cannot judge is listed for a person. */
import { type Speaker, say } from '../../../text'
import type { Graded } from '../../workers/grading'

export function Marks({ graded, speaker }: { graded: Graded; speaker: Speaker }) {
  const { marks, notJudged, gates, minorsKept } = graded.result
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
            <th className='num'>{say('marks.notDone')}</th>
            <th className='num'>{say('marks.kept')}</th>
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
              <td className='num'>{mark.notDone}</td>
              <td className='num'>{`${mark.kept}/${mark.asked}`}</td>
              <td className={mark.state === 'not met' ? 'crit' : undefined}>
                {speaker.say(`mark.${mark.state.replace(' ', '-')}`)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className='note'>
        {say('marks.states')} {floorWords(marks, speaker)}{' '}
        {say('marks.minorsKept', { share: Math.floor(minorsKept * 100) })}
      </p>
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

/** The floor of most elements, and which have another. */
function floorWords(marks: Graded['result']['marks'], speaker: Speaker): string {
  const most = Math.max(0, ...marks.map(({ floor }) => floor.majors))
  const own = marks
    .filter(({ floor }) => floor.majors < most)
    .map(({ element, floor }) =>
      say('marks.floorOwn', { count: floor.majors, element: speaker.say(`element.${element}`) }),
    )
  return say('marks.floor', { majors: most, own: own.join(', ') })
}
