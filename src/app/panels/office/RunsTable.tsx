/** The recorded runs under the draft, graded anew as soon as it has no issues: before and now, and what is different. */
import { useEffect } from 'react'
import { useStore } from 'zustand'
import { amperes, english, makeSpeakerOf, type Speaker, volts } from '../../../text'
import { say } from '../../../text/office'
import { scenarioIds, scenarioWordsOf } from '../../storage/library'
import { recordedRuns } from '../../storage/recordedRuns'
import { officeStore } from '../../stores/office/officeStore'
import { chooseRunsOf, everywhere, regradeRuns, runsStore, stopRuns } from '../../stores/office/runsStore'
import type { Regraded, RegradedRun, RunAnswer } from '../../workers/regrade'

const firstWithRuns = scenarioIds.find((id) => 'clean' in recordedRuns(id)) ?? ''

/** Milliseconds without a change before the runs are graded. */
const pause = 700

export function RunsTable({ isSound }: { isSound: boolean }) {
  const draft = useStore(officeStore, (office) => office.draft)
  const origin = useStore(officeStore, (office) => office.origin)
  const { scenario, runs, of, progress, failure } = useStore(runsStore)
  const isPack = draft?.kind === 'pack'
  const isKnown = scenario === everywhere || scenarioIds.includes(scenario)
  const wanted = isPack ? (isKnown ? scenario : firstWithRuns) : (origin?.id ?? '')
  const isEverywhere = scenario === everywhere
  const listed = isEverywhere ? runs.filter(isChanged) : runs
  useEffect(() => {
    if (wanted !== scenario) chooseRunsOf(wanted)
  }, [wanted, scenario])
  useEffect(() => {
    if (of !== draft) stopRuns()
    if (!isSound || of === draft || wanted !== scenario) return
    const timer = setTimeout(regradeRuns, pause)
    return () => clearTimeout(timer)
  }, [draft, of, isSound, wanted, scenario])
  const speaker = makeSpeakerOf({}, english, isEverywhere ? {} : scenarioWordsOf(scenario))
  const isRunning = progress !== null
  return (
    <div>
      <h2 className='sec gap'>{say('office.runs')}</h2>
      {isPack && (
        <label className='field'>
          {say('office.runsOf')}
          <select className='entry' value={scenario} onChange={(event) => chooseRunsOf(event.target.value)}>
            <option value={everywhere}>{say('office.everywhere')}</option>
            {scenarioIds.map((id) => (
              <option key={id} value={id}>
                {makeSpeakerOf({}, english, scenarioWordsOf(id)).say('scenario.name')}
              </option>
            ))}
          </select>
        </label>
      )}
      <div className='working' role={failure ? 'alert' : 'status'}>
        <Standing isSound={isSound} isEmpty={of === draft && !isRunning && runs.length === 0} />
        <button type='button' className='btn' disabled={!isSound} onClick={isRunning ? stopRuns : regradeRuns}>
          {say(isRunning ? 'office.stop' : 'office.again')}
        </button>
      </div>
      {isEverywhere && runs.length > 0 && (
        <p className='q'>{say('office.changedRuns', { changed: listed.length, count: runs.length })}</p>
      )}
      {listed.length > 0 && (
        <table className='officeruns' aria-busy={isRunning || of !== draft}>
          <thead>
            <tr>
              <th>{say('office.run')}</th>
              <th>{say('office.outcome')}</th>
              {!isEverywhere && <th>{say('office.worst')}</th>}
            </tr>
          </thead>
          <tbody>
            {listed.map((run) => (
              <RunRow key={run.name} run={run} speaker={isEverywhere ? null : speaker} />
            ))}
          </tbody>
        </table>
      )}
    </div>
  )
}

function Standing({ isSound, isEmpty }: { isSound: boolean; isEmpty: boolean }) {
  const { progress, failure } = useStore(runsStore)
  if (failure) return <span className='crit'>{failure}</span>
  if (progress)
    return (
      <>
        <span>{say('office.regrading', { percent: Math.floor((100 * progress.done) / progress.total) })}</span>
        <progress value={progress.done} max={progress.total} aria-label={say('office.progress')} />
      </>
    )
  return <span className='q grow'>{!isSound ? say('office.whenNone') : isEmpty ? say('office.noRuns') : ''}</span>
}

/** What happened in it is judged otherwise. */
const isChanged = ({ before, now }: RegradedRun): boolean =>
  outcomeOf(before) !== outcomeOf(now) ||
  ('rules' in before && 'rules' in now && differences(before.rules, now.rules).flat().length > 0)

/** @param speaker null: nobody asked what could have reached anybody */
function RunRow({ run: { name, before, now }, speaker }: { run: RegradedRun; speaker: Speaker | null }) {
  const [was, is] = [outcomeOf(before, speaker === null), outcomeOf(now, speaker === null)]
  const [gained, lost] = 'issues' in before || 'issues' in now ? [[], []] : differences(before.rules, now.rules)
  return (
    <tr data-run={name}>
      <th scope='row'>
        {name.replaceAll('-', ' ')}
        {gained.length > 0 && (
          <span className='crit officeissue'>{say('office.gained', { rules: gained.join(', ') })}</span>
        )}
        {lost.length > 0 && <span className='q officeissue'>{say('office.lost', { rules: lost.join(', ') })}</span>}
        {'refused' in now && now.refused !== ('refused' in before ? before.refused : 0) && (
          <span className='q officeissue'>{say('office.refusedOrders', { count: now.refused })}</span>
        )}
      </th>
      <Pair was={was} is={is} />
      {speaker && <Pair was={worstWords(before, speaker)} is={worstWords(now, speaker)} />}
    </tr>
  )
}

/** One line where nothing changed, else the two below each other. */
function Pair({ was, is }: { was: string; is: string }) {
  if (was === is) return <td>{is}</td>
  return (
    <td>
      <span className='q officeissue'>
        {say('office.before')}: {was}
      </span>
      <b>
        {say('office.now')}: {is}
      </b>
    </td>
  )
}

/** @param isQuick nobody will try what could have happened */
function outcomeOf(it: RunAnswer, isQuick = false): string {
  if ('issues' in it)
    return it.issues.map(({ path, found, allowed }) => `${path}: ${say('office.found', { found, allowed })}`)[0] ?? ''
  const isOpen = !it.isSwept && it.outcome === 'provisional'
  return isOpen ? say(isQuick ? 'office.noFailing' : 'office.notYet') : say(`outcome.${it.outcome}`)
}

function worstWords(it: RunAnswer, speaker: Speaker): string {
  if ('issues' in it) return ''
  if (!it.isSwept) return say('office.notYet')
  return it.worst ? reachWords(it.worst, speaker) : say('office.nobody')
}

function reachWords({ person, path, exposure }: NonNullable<Regraded['worst']>, speaker: Speaker): string {
  return say('office.reach', {
    voltage: volts(exposure.prospectiveVoltage),
    current: amperes(exposure.bodyCurrent),
    who: speaker.say(`person.${person}`),
    path: speaker.say(`path.${path}`),
  })
}

/** Each finding counts: a rule broken twice and now three times is one more. */
function differences(
  before: readonly string[],
  now: readonly string[],
): readonly [readonly string[], readonly string[]] {
  return [without(now, before), without(before, now)]
}

function without(these: readonly string[], those: readonly string[]): readonly string[] {
  const left = [...those]
  return these.filter((it) => {
    const index = left.indexOf(it)
    if (index >= 0) left.splice(index, 1)
    return index < 0
  })
}
