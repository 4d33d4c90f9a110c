/**
 * The livening, drawn: its time as a rule, the second that is looked at as a picture, what reached each person beside it.
 * Starts frozen at the first instant.
 */
import { useEffect, useState } from 'react'
import { useStore } from 'zustand'
import type { Exposure } from '../../../engine'
import { type Speaker, amperes, plain, say, seconds, timeOfDay, volts } from '../../../text'
import { courseStore } from '../../stores/courseStore'
import { feelAt, gradeStore } from '../../stores/gradeStore'
import { jobStore } from '../../stores/jobStore'
import type { DrawnLivening } from '../../workers/grading'
import { Tally } from '../drawing/Marks'
import { useSpeaker } from '../useSpeaker'
import { CircuitSheet } from './CircuitSheet'
import { ExposureRow } from './ExposureRow'
import { FeelersBox, type FeelersEntry, findHandhold, findPoint, noFeelers, pickedUp } from './FeelersBox'
import { exactSeconds } from './happeningWords'
import { InstantTables } from './InstantTables'
import { type Feeling, LiveningPicture } from './LiveningPicture'
import { type Shown, useShown } from './useShown'
import { pointWords } from './pointWords'
import { worstByPerson } from './verdicts'
import { Working } from './Working'

export interface LiveningSheetProps {
  readonly onBack: () => void
  /** After the job: every moment and everything that could have come alive can be looked into. */
  readonly hasCircuit?: boolean
}

export function LiveningSheet({ onBack, hasCircuit = false }: LiveningSheetProps) {
  const drawn = useStore(gradeStore, (grade) => grade.drawn)
  const isWorking = useStore(gradeStore, (grade) => grade.progress !== null)
  const shown = useShown(drawn)
  const [isCircuit, setIsCircuit] = useState(false)
  const hasCome = useStore(jobStore, (job) => (job.belief?.livening ?? null) !== null)
  const speaker = useSpeaker()
  if (isCircuit && drawn) return <CircuitSheet drawn={drawn} onBack={() => setIsCircuit(false)} />
  return (
    <main className='stack livening'>
      <div className='livehead'>
        <h1 className='head'>
          {drawn
            ? oneSentence(drawn, speaker)
            : say(isWorking ? 'livening.working' : hasCome ? 'livening.notDrawn' : 'livening.none')}
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
      {shown && (
        <div className='cols livecols grow'>
          <Picture shown={shown} speaker={speaker} />
          <section className='stack scroll' tabIndex={0} aria-label={say('livening.reached')}>
            <h2 className='sec'>
              {say('livening.reached')}
              <span className='q'>{say('livening.worstPath')}</span>
            </h2>
            <Reached shown={shown} speaker={speaker} />
            <VerdictKey speaker={speaker} />
          </section>
        </div>
      )}
    </main>
  )
}

function Picture({ shown, speaker }: { shown: Shown; speaker: Speaker }) {
  const canFeel = useStore(jobStore, (job) => job.head?.purpose === 'practise')
  const [entry, setEntry] = useState(noFeelers)
  useFeeling(entry)
  const feeling: Feeling | null = canFeel
    ? {
        kind: entry.kind,
        at: findPoint(entry),
        hands: entry.hands,
        onPoint: (at) => setEntry((before) => pointedAt(before, at)),
        onPick: (id) => {
          const handhold = findHandhold(shown.handholds, id)
          if (handhold !== undefined) setEntry((before) => pickedUp(before, handhold))
        },
      }
    : null
  return (
    <section className='stack scroll' tabIndex={0} aria-label={say('livening.picture')}>
      <LiveningPicture shown={shown} title={pictureText(shown, speaker)} feeling={feeling} />
      {canFeel && <FeelersBox entry={entry} handholds={shown.handholds} onChange={setEntry} />}
      <InstantTables instant={shown.instant} speaker={speaker} />
    </section>
  )
}

const pointedAt = (entry: FeelersEntry, at: { x: number; y: number }): FeelersEntry => ({
  ...entry,
  kind: entry.kind === 'hands' ? 'pace' : entry.kind,
  east: plain(at.x, 2),
  north: plain(at.y, 2),
})

/** Asks once nothing has been changed for a moment. */
function useFeeling(entry: FeelersEntry): void {
  useEffect(() => {
    const { kind, hands } = entry
    const at = findPoint(entry)
    const [left, right] = hands
    const wait = setTimeout(() => {
      if (kind !== 'hands') {
        if (at) feelAt({ kind, at })
      } else if (left !== null && right !== null) feelAt({ kind, on: [left, right] })
    }, 200)
    return () => clearTimeout(wait)
  }, [entry])
}

function Reached({ shown, speaker }: { shown: Shown; speaker: Speaker }) {
  const second = useStore(courseStore, (it) => it.second)
  const soFar = useStore(gradeStore, (it) => it.soFar)
  const worst = worstByPerson(shown.exposures)
  if (worst.length === 0) return <p className='q'>{say('livening.nobody')}</p>
  return worst.map((exposure) => {
    const same = soFar?.exposures.find(({ person, path }) => person === exposure.person && path === exposure.path)
    const line = soFar && second > 0 ? { second: exactSeconds(soFar.second), exposure: same ?? null } : null
    return <ExposureRow key={exposure.person} exposure={exposure} soFar={line} speaker={speaker} />
  })
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

function pictureText(drawn: DrawnLivening, speaker: Speaker): string {
  const electrodes = drawn.instant.electrodes
    .map((it) => `${pointWords(it.node, speaker)} ${amperes(it.size)}`)
    .join(', ')
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
