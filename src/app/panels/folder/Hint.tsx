/** What the rules ask of the act that is open, or was ordered last: only when asked, only in practice. */
import { useStore } from 'zustand'
import { say } from '../../../text'
import { rulesOfAct } from '../../storage/findRule'
import { jobStore } from '../../stores/jobStore'
import { showDialog, viewStore } from '../../stores/viewStore'
import { CloseFoot, Slip } from '../shell/Slip'
import { useSpeaker } from '../useSpeaker'

export function Hint() {
  const speaker = useSpeaker()
  const sheet = useStore(viewStore, (view) => view.sheet)
  const last = useStore(viewStore, (view) => view.lasts[0])
  const pack = useStore(jobStore, (job) => job.head?.pack ?? '')
  const act = sheet?.act?.split(':')[0] ?? last?.do
  const rules = act === undefined ? [] : rulesOfAct(pack, act)
  return (
    <Slip title={act === undefined ? say('hint.title') : speaker.say(`action.${act}`)} onClose={() => showDialog(null)}>
      <p className='note'>{say('hint.note')}</p>
      <ul className='hints'>
        {rules.map((rule) => (
          <li key={rule.id}>
            {speaker.say(rule.asks)} <span className='q'>{rule.source}</span>
          </li>
        ))}
      </ul>
      {rules.length === 0 && <p className='gap'>{say('hint.none')}</p>}
      <CloseFoot />
    </Slip>
  )
}
