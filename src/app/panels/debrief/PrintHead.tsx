/** Head of the printed record: caution first, then whose run it is. Shown on paper only. */
import { useStore } from 'zustand'
import { say } from '../../../text'
import { cautionOf } from '../../storage/packShelf'
import { jobStore } from '../../stores/jobStore'
import type { Graded } from '../../workers/grading'
import { BrandMark } from '../drawing/Marks'
import { unscored } from '../shown/unscored'
import { useSpeaker } from '../useSpeaker'

export function PrintHead({ graded }: { graded: Graded }) {
  const head = useStore(jobStore, (job) => job.head)
  const speaker = useSpeaker()
  if (!head) return null
  return (
    <div className='printhead'>
      <div className='printbrand'>
        <BrandMark /> <b>{say('app.name')}</b>
        <span>{say('print.record', { purpose: say(`purpose.${head.purpose}`) })}</span>
      </div>
      <p className='printcaution'>{cautionOf(head.pack)}</p>
      <p className='printcaution'>{say('app.caution.full')}</p>
      <dl className='form'>
        <dt>{say('block.scenario')}</dt>
        <dd>{head.title}</dd>
        <dt>{say('block.seed')}</dt>
        <dd className='n'>{head.seed}</dd>
        <dt>{say('block.pack')}</dt>
        <dd>{head.packName}</dd>
        <dt>{say('depot.who')}</dt>
        <dd>{head.person || '–'}</dd>
        <dt>{say('debrief.outcomeLabel')}</dt>
        <dd>{unscored(head) ?? speaker.say(`outcome.${graded.result.outcome}`)}</dd>
        <dt>{say('block.version')}</dt>
        <dd className='n'>{graded.engine.slice(0, 16)}</dd>
      </dl>
    </div>
  )
}
