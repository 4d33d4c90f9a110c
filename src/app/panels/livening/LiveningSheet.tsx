/** The livening, drawn: one frozen instant in plan, what reached each person beside it, the verdicts from mild to worst. */
import { useEffect, useState } from 'react'
import { useStore } from 'zustand'
import type { Exposure } from '../../../engine'
import { type Speaker, amperes, plain, say, seconds, timeOfDay, volts } from '../../../text'
import { feelAt, gradeStore } from '../../stores/gradeStore'
import { jobStore } from '../../stores/jobStore'
import type { DrawnLivening } from '../../workers/grading'
import { Tally } from '../drawing/Marks'
import { useSpeaker } from '../useSpeaker'
import { ExposureRow } from './ExposureRow'
import { CircuitSheet } from './CircuitSheet'
import { FeelersBox, type FeelersEntry, findPoint, noFeelers } from './FeelersBox'
import { LiveningPicture } from './LiveningPicture'
import { Working } from './Working'
import { worstByPerson } from './verdicts'

export interface LiveningSheetProps {
  readonly onBack: () => void
  /** After the job: every moment and everything that could have come alive can be looked into. */
  readonly hasCircuit?: boolean
}

export function LiveningSheet({ onBack, hasCircuit = false }: LiveningSheetProps) {
  const drawn = useStore(gradeStore, (grade) => grade.drawn)
  const isWorking = useStore(gradeStore, (grade) => grade.progress !== null)
  const canFeel = useStore(jobStore, (job) => job.head?.purpose === 'practise')
  const [entry, setEntry] = useState(noFeelers)
  useFeeling(entry)
  const [isCircuit, setIsCircuit] = useState(false)
  const speaker = useSpeaker()
  if (isCircuit && drawn) return <CircuitSheet drawn={drawn} onBack={() => setIsCircuit(false)} />
  return (
    <main className='stack livening'>
      <div className='livehead'>
        <h1 className='head'>
          {drawn ? oneSentence(drawn, speaker) : say(isWorking ? 'livening.working' : 'livening.none')}
        </h1>
        {drawn && hasCircuit && (
          <button type='button' className='btn' onClick={() => setIsCircuit(true)}>
            {say('circuit.open')}
          </button>
        )}
        <button type='button' className='btn go' onClick={onBack} autoFocus>
          {say('livening.back')}
        </button>
      </div>
      <Working />
      {drawn && (
        <div className='cols livecols grow'>
          <section className='stack scroll' tabIndex={0} aria-label={say('livening.plan')}>
            <LiveningPicture
              drawn={drawn}
              title={planText(drawn, speaker)}
              {...(canFeel
                ? { feelers: { at: findPoint(entry), onPoint: (at) => setEntry(pointedAt(entry, at)) } }
                : {})}
            />
            {canFeel && <FeelersBox entry={entry} onChange={setEntry} />}
            <Branches drawn={drawn} />
          </section>
          <section className='stack scroll' tabIndex={0} aria-label={say('livening.reached')}>
            <h2 className='sec'>
              {say('livening.reached')}
              <span className='q'>{say('livening.worstPath')}</span>
            </h2>
            {worstByPerson(drawn.exposures).map((exposure) => (
              <ExposureRow key={exposure.person} exposure={exposure} speaker={speaker} />
            ))}
            {drawn.exposures.length === 0 && <p className='q'>{say('livening.nobody')}</p>}
            <VerdictKey speaker={speaker} />
          </section>
        </div>
      )}
    </main>
  )
}

const pointedAt = (entry: FeelersEntry, at: { x: number; y: number }): FeelersEntry => ({
  ...entry,
  east: plain(at.x, 2),
  north: plain(at.y, 2),
})

/** Asks once nothing has been changed for a moment. */
function useFeeling(entry: FeelersEntry): void {
  useEffect(() => {
    const at = findPoint(entry)
    if (!at) return
    const wait = setTimeout(() => feelAt({ kind: entry.kind, at }), 200)
    return () => clearTimeout(wait)
  }, [entry])
}

/** What came alive, why, for how long, what cleared it. */
export function oneSentence(drawn: DrawnLivening, speaker: Speaker): string {
  return speaker.say(`cleared.${drawn.clearedBy}`, {
    time: timeOfDay(drawn.belief.sheet.startsAt + drawn.at).slice(0, 5),
    what: speaker.say(`livening.${drawn.livening}`),
    current: amperes(drawn.liveCurrent),
    rise: volts(drawn.siteRise),
    duration: seconds(drawn.duration),
  })
}

function planText(drawn: DrawnLivening, speaker: Speaker): string {
  const electrodes = drawn.instant.electrodes.map((it) => `${it.node} ${amperes(it.size)}`).join(', ')
  return `${oneSentence(drawn, speaker)} ${electrodes}`
}

const zones = ['AC-1', 'AC-2', 'AC-3', 'AC-4.1', 'AC-4.2', 'AC-4.3'] as const satisfies readonly Exposure['zone'][]

function VerdictKey({ speaker }: { speaker: Speaker }) {
  return (
    <>
      <h2 className='sec gap'>{say('livening.verdicts')}</h2>
      <ul className='verdictkey'>
        {zones.map((zone, i) => (
          <li key={zone} className={i >= 3 ? 'verdict crit' : 'verdict'}>
            <Tally strokes={i} />
            {speaker.say(`zone.${zone}`)}
          </li>
        ))}
      </ul>
    </>
  )
}

/** Branch currents as a table, largest first: the text of the drawing. */
function Branches({ drawn }: { drawn: DrawnLivening }) {
  const shown = [...drawn.instant.branches]
    .filter((it) => it.size > 0.005)
    .sort((a, b) => b.size - a.size)
    .slice(0, 24)
  return (
    <details>
      <summary>{say('livening.branches')}</summary>
      <table>
        <thead>
          <tr>
            <th>{say('livening.from')}</th>
            <th>{say('livening.to')}</th>
            <th className='num'>{say('livening.current')}</th>
          </tr>
        </thead>
        <tbody>
          {shown.map((it) => (
            <tr key={it.id}>
              <td>{it.from}</td>
              <td>{it.to === '0' ? say('livening.earth') : it.to}</td>
              <td className='num'>{amperes(it.size)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  )
}
