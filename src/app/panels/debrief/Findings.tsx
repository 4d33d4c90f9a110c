/**
 * Findings as they happened: what the rule asks, why with a number, what was done, which rule and source, what sort of
 * error, whether put right; below it what follows from it and is not counted again.
 */
import type { Belief } from '../../../engine'
import { type Speaker, say, timeOfDay } from '../../../text'
import type { Graded } from '../../workers/grading'
import { Pennant } from '../drawing/Marks'
import { findRule } from '../../storage/findRule'
import { useStore } from 'zustand'
import { jobStore } from '../../stores/jobStore'
import { figureOf } from './figureOf'

type Finding = Graded['result']['findings'][number]

export function Findings({ graded, belief, speaker }: { graded: Graded; belief: Belief; speaker: Speaker }) {
  const pack = useStore(jobStore, (job) => job.head?.pack ?? '')
  const { findings } = graded.result
  const count = (severity: string) => findings.filter((it) => it.severity === severity).length
  return (
    <>
      <h2 className='sec'>
        {say('debrief.findings')}
        <span className='q'>
          {say('findings.count', { critical: count('critical'), major: count('major'), minor: count('minor') })}
        </span>
      </h2>
      {findings.length === 0 && <p className='q'>{say('findings.none')}</p>}
      {findings.map((finding, i) => (
        <OneFinding
          key={`${finding.rule}${finding.at}${i}`}
          finding={finding}
          pack={pack}
          startsAt={belief.sheet.startsAt}
          speaker={speaker}
        />
      ))}
    </>
  )
}

interface OneFindingProps {
  readonly finding: Finding
  readonly pack: string
  /** Second of the day. */
  readonly startsAt: number
  readonly speaker: Speaker
}

function OneFinding({ finding, pack, startsAt, speaker }: OneFindingProps) {
  const rule = findRule(pack, finding.rule)
  const { facts, leadsTo, putRightAt } = finding
  return (
    <article className='finding'>
      <span className='t'>{timeOfDay(startsAt + finding.at)}</span>
      <div>
        <h4>{speaker.say(rule?.asks ?? finding.rule, facts)}</h4>
        <p>{[speaker.say(rule?.reason ?? finding.rule, facts), figureOf(facts)].filter(Boolean).join(' ')}</p>
        <p className='src'>
          {[
            finding.who ? speaker.say(`person.${finding.who}`) : '',
            actOf(finding, speaker),
            speaker.say(`element.${finding.element}`),
            say('findings.rule', { rule: finding.rule, source: rule?.source ?? '' }),
            finding.recovered && putRightAt !== undefined
              ? say('findings.putRight', { time: timeOfDay(startsAt + putRightAt).slice(0, 5) })
              : say('findings.open'),
          ]
            .filter(Boolean)
            .join('. ')}
        </p>
        <p className='src'>{speaker.say(`error.${finding.error}`)}</p>
        {leadsTo.length > 0 && (
          <p className='src'>
            {say('findings.follows')}{' '}
            {leadsTo
              .map(
                (it) =>
                  `${timeOfDay(startsAt + it.at)} ${speaker.say(findRule(pack, it.rule)?.asks ?? it.rule, it.facts)}`,
              )
              .join(' ')}
          </p>
        )}
      </div>
      <span className={finding.severity === 'critical' ? 'sev crit' : 'sev'}>
        <Pennant severity={finding.severity} />
        {speaker.say(`severity.${finding.severity}`)}
      </span>
    </article>
  )
}

/** The act that was ordered, or that it was left out. */
function actOf({ entry, facts }: Finding, speaker: Speaker): string {
  if (entry < 0) return say('findings.leftOut')
  const act = facts['do']
  return act === undefined ? '' : say('findings.act', { act: speaker.say(`action.${act}`) })
}
