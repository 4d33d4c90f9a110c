/** The debrief, in the order in which it is read: what came alive, each person, findings, what could have happened, marks. */
import { useEffect, useState } from 'react'
import { useStore } from 'zustand'
import { type Speaker, say, timeOfDay } from '../../../text'
import { gradeJob, gradeStore } from '../../stores/gradeStore'
import { jobStore } from '../../stores/jobStore'
import type { Graded } from '../../workers/grading'
import { LiveningSheet, oneSentence } from '../livening/LiveningSheet'
import { Working } from '../livening/Working'
import { unscored } from '../shown/unscored'
import { useBelief } from '../useBelief'
import { useSpeaker } from '../useSpeaker'
import { caseLine } from './caseLine'
import { CouldHave } from './CouldHave'
import { DebriefFoot, type Sheet } from './DebriefFoot'
import { Findings } from './Findings'
import { Marks } from './Marks'
import { Mattered } from './Mattered'
import { PeopleTable } from './PeopleTable'
import { PrintHead } from './PrintHead'
import { Suppose } from './Suppose'
import { WhatHeld } from './WhatHeld'

export function DebriefPlace({ onMarks }: { onMarks?: () => void }) {
  const [sheet, setSheet] = useState<Sheet>('debrief')
  const graded = useStore(gradeStore, (grade) => grade.graded)
  const ordered = useStore(jobStore, (job) => job.ordered)
  useEffect(gradeJob, [ordered])
  if (sheet === 'drawing') return <LiveningSheet hasCircuit onBack={() => setSheet('debrief')} />
  if (sheet === 'suppose' && graded?.drawn) return <Suppose graded={graded} onBack={() => setSheet('debrief')} />
  return (
    <main className='stack debrief'>
      <h1 className='vh'>{say('app.debrief')}</h1>
      <Working />
      {graded && <Sheets graded={graded} onSheet={setSheet} {...(onMarks ? { onMarks } : {})} />}
    </main>
  )
}

interface SheetsProps {
  readonly graded: Graded
  readonly onSheet: (sheet: Sheet) => void
  readonly onMarks?: () => void
}

function Sheets({ graded, onSheet, onMarks }: SheetsProps) {
  const belief = useBelief()
  const speaker = useSpeaker()
  const { result } = graded
  const why = unscored(useStore(jobStore, (job) => job.head))
  return (
    <>
      <PrintHead graded={graded} />
      <div className='cols debriefcols grow'>
        <section className='stack scroll' tabIndex={0} aria-label={say('debrief.happened')}>
          <h2 className='head'>{whatHappened(graded, belief.sheet.startsAt, speaker)}</h2>
          <p className={result.outcome === 'fail' && why === null ? 'outcome crit' : 'outcome'}>
            {why ?? say('debrief.outcome', { outcome: speaker.say(`outcome.${result.outcome}`) })}
            <span className='q'>
              {say('debrief.gates', {
                criticals: result.gates.criticals,
                above: result.gates.above,
                marginal: result.gates.marginal,
              })}
            </span>
          </p>
          {!result.visible && graded.worst && (
            <>
              <h2 className='sec gap'>{say('people.couldHave')}</h2>
              <p className='q'>{caseLine(graded.worst.of, belief, speaker)}</p>
            </>
          )}
          <PeopleTable graded={graded} speaker={speaker} />
          <WhatHeld graded={graded} speaker={speaker} />
        </section>
        <section className='stack scroll' tabIndex={0} aria-label={say('debrief.findings')}>
          <Findings graded={graded} belief={belief} speaker={speaker} />
          <CouldHave graded={graded} belief={belief} speaker={speaker} />
          <Mattered graded={graded} belief={belief} speaker={speaker} />
          {why === null && <Marks graded={graded} speaker={speaker} />}
        </section>
      </div>
      <DebriefFoot
        graded={graded}
        startsAt={belief.sheet.startsAt}
        onSheet={onSheet}
        {...(onMarks ? { onMarks } : {})}
      />
    </>
  )
}

function whatHappened({ result, drawn }: Graded, startsAt: number, speaker: Speaker): string {
  const { told } = result
  if (told) {
    const time = timeOfDay(startsAt + told.at).slice(0, 5)
    return say('debrief.told', { time, what: speaker.say(`livening.${told.livening}`) })
  }
  return result.visible && drawn ? oneSentence(drawn, speaker) : say('debrief.quiet')
}
