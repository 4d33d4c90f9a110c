/** The assessor's side: the machine's state beside one's own mark for each element, notes, what no tool can judge, record. */
import { useEffect, useState } from 'react'
import { useStore } from 'zustand'
import type { Result } from '../../../engine'
import { type Speaker, say } from '../../../text'
import { download } from '../../storage/download'
import { type Mark, assessStore, endAssessment, setMark, setOverrule, writeNotes } from '../../stores/assessStore'
import { exportRecord } from '../../stores/exportRecord'
import { forgetGrade, gradeJob, gradeStore } from '../../stores/gradeStore'
import { jobStore } from '../../stores/jobStore'
import { leaveJob } from '../../stores/openJob'
import { Working } from '../livening/Working'
import { useSpeaker } from '../useSpeaker'

const marks: readonly Mark[] = [1, 2, 3, 4, 5, 'not-observed']

export function AssessorSheet({ onDebrief }: { onDebrief: () => void }) {
  const graded = useStore(gradeStore, (grade) => grade.graded)
  const speaker = useSpeaker()
  useEffect(gradeJob, [])
  return (
    <main className='stack assessor'>
      <h1 className='vh'>{say('assess.marksTitle')}</h1>
      <Working />
      {graded && (
        <div className='cols assesscols grow'>
          <section className='stack scroll' tabIndex={0} aria-label={say('assess.marksTitle')}>
            <Elements result={graded.result} speaker={speaker} />
          </section>
          <section className='stack scroll' tabIndex={0} aria-label={say('assess.record')}>
            <RecordFacts result={graded.result} speaker={speaker} />
            <Overruling />
            <Notes />
            <h2 className='sec gap'>{say('marks.notJudged')}</h2>
            <ul className='note'>
              {graded.result.notJudged.map((it) => (
                <li key={it}>{speaker.has(`not-judged.${it}`) ? speaker.say(`not-judged.${it}`) : it}</li>
              ))}
            </ul>
            <p className='note gap'>{say('assess.provisional')}</p>
            <div className='onpaper signatures'>
              <p>{say('assess.assessor')}</p>
              <p>{say('assess.candidate')}</p>
            </div>
            <RecordFoot onDebrief={onDebrief} />
          </section>
        </div>
      )}
    </main>
  )
}

/** What was not saved is closed by a second press only. */
function RecordFoot({ onDebrief }: { onDebrief: () => void }) {
  const [state, setState] = useState<'unsaved' | 'asked' | 'saved'>('unsaved')
  const isReasonMissing = useStore(assessStore, ({ overrule }) => overrule !== null && overrule.reason.trim() === '')
  const close = () => {
    endAssessment()
    forgetGrade()
    leaveJob()
  }
  return (
    <>
      <div className='foot'>
        <button type='button' className='btn' onClick={onDebrief}>
          {say('assess.debrief')}
        </button>
        <button type='button' className='btn' onClick={() => print()}>
          {say('debrief.print')}
        </button>
        <button
          type='button'
          className='btn go'
          disabled={isReasonMissing}
          onClick={() => {
            download('record.json', exportRecord(say('app.caution.full')))
            setState('saved')
          }}
        >
          {say('assess.export')}
        </button>
        <button type='button' className='btn' onClick={() => (state === 'unsaved' ? setState('asked') : close())}>
          {say(state === 'asked' ? 'assess.endUnsaved' : 'assess.end')}
        </button>
      </div>
      <p className='note' role='status'>
        {isReasonMissing ? say('assess.reasonMissing') : ''}
      </p>
    </>
  )
}

/** The assessor decides: the machine's outcome stands, or another one with its reason. */
function Overruling() {
  const overrule = useStore(assessStore, (assessment) => assessment.overrule)
  return (
    <>
      <h2 className='sec gap'>{say('assess.overrule')}</h2>
      <div className='seg' role='radiogroup' aria-label={say('assess.overrule')}>
        {([null, 'pass', 'fail'] as const).map((outcome) => (
          <button
            key={outcome}
            type='button'
            role='radio'
            className='btn'
            aria-checked={(overrule?.outcome ?? null) === outcome}
            onClick={() => setOverrule(outcome && { outcome, reason: overrule?.reason ?? '' })}
          >
            {say(outcome === null ? 'assess.asMachine' : `outcome.${outcome}`)}
          </button>
        ))}
      </div>
      <p className='onpaper'>{say(overrule ? `outcome.${overrule.outcome}` : 'assess.asMachine')}</p>
      {overrule && (
        <label className='field'>
          {say('assess.reason')}
          <textarea
            className='entry'
            value={overrule.reason}
            onChange={(event) => setOverrule({ ...overrule, reason: event.target.value })}
          />
        </label>
      )}
    </>
  )
}

function Elements({ result, speaker }: { result: Result; speaker: Speaker }) {
  const own = useStore(assessStore, (assessment) => assessment.marks)
  return (
    <>
      <h2 className='sec'>
        {say('assess.marksTitle')}
        <span className='q'>{say('assess.beside')}</span>
      </h2>
      <table className='elements'>
        <thead>
          <tr>
            <th>{say('marks.element')}</th>
            <th>{say('assess.machine')}</th>
            <th>{say('assess.yours')}</th>
          </tr>
        </thead>
        <tbody>
          {result.marks.map((mark) => (
            <tr key={mark.element}>
              <th scope='row'>{speaker.say(`element.${mark.element}`)}</th>
              <td className={mark.state === 'not met' ? 'crit' : undefined}>
                {speaker.say(`mark.${mark.state.replace(' ', '-')}`)}
              </td>
              <td>
                <div className='seg' role='radiogroup' aria-label={speaker.say(`element.${mark.element}`)}>
                  {marks.map((each) => (
                    <button
                      key={each}
                      type='button'
                      role='radio'
                      className='btn'
                      aria-checked={own[mark.element] === each}
                      onClick={() => setMark(mark.element, each)}
                    >
                      {each === 'not-observed' ? say('assess.notObserved') : each}
                    </button>
                  ))}
                </div>
                <span className='onpaper'>{markWord(own[mark.element])}</span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  )
}

function markWord(mark: Mark | undefined): string {
  if (mark === undefined) return '–'
  return mark === 'not-observed' ? say('assess.notObserved') : String(mark)
}

function RecordFacts({ result, speaker }: { result: Result; speaker: Speaker }) {
  const setUp = useStore(assessStore, (assessment) => assessment.setUp)
  const reloads = useStore(jobStore, (job) => job.reloads)
  const withdrawn = useStore(jobStore, (job) => job.withdrawn)
  if (!setUp) return null
  const rows = [
    [say('assess.candidate'), setUp.candidate],
    [say('assess.assessor'), setUp.assessor],
    [say('block.seed'), String(setUp.seed)],
    [say('assess.attempt'), setUp.attempt === 1 ? say('assess.first') : say('assess.later', { number: setUp.attempt })],
    [say('debrief.outcomeLabel'), speaker.say(`outcome.${result.outcome}`)],
    [say('assess.reloads'), String(reloads)],
    [say('assess.withdrawn'), String(withdrawn)],
  ]
  return (
    <>
      <h2 className='sec'>{say('assess.record')}</h2>
      <dl className='form'>
        {rows.map(([name, value]) => (
          <Row key={name} name={name!} value={value!} />
        ))}
      </dl>
    </>
  )
}

function Row({ name, value }: { name: string; value: string }) {
  return (
    <>
      <dt>{name}</dt>
      <dd>{value}</dd>
    </>
  )
}

function Notes() {
  const notes = useStore(assessStore, (assessment) => assessment.notes)
  return (
    <label className='field'>
      {say('assess.notes')}
      <textarea className='entry' value={notes} onChange={(event) => writeNotes(event.target.value)} />
    </label>
  )
}
