/** Findings as they happened: what was done, what the rule asks, why with a number, source, severity, whether put right. */
import type { Belief } from '../../../engine'
import { type Speaker, say, timeOfDay } from '../../../text'
import type { Graded } from '../../workers/grading'
import { Pennant } from '../drawing/Marks'
import { findRule } from '../../storage/findRule'
import { useStore } from 'zustand'
import { jobStore } from '../../stores/jobStore'

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
      {findings.map((finding, i) => {
        const rule = findRule(pack, finding.rule)
        return (
          <article key={`${finding.rule}${finding.at}${i}`} className='finding'>
            <span className='t'>{timeOfDay(belief.sheet.startsAt + finding.at)}</span>
            <div>
              <h4>{speaker.say(rule?.asks ?? finding.rule, finding.facts)}</h4>
              <p>{speaker.say(rule?.reason ?? finding.rule, finding.facts)}</p>
              <p className='src'>
                {[
                  finding.who ? speaker.say(`person.${finding.who}`) : '',
                  speaker.say(`element.${finding.element}`),
                  sentence(rule?.source ?? ''),
                  finding.recovered ? say('findings.recovered') : say('findings.open'),
                ]
                  .filter(Boolean)
                  .join('. ')}
              </p>
            </div>
            <span className={finding.severity === 'critical' ? 'sev crit' : 'sev'}>
              <Pennant severity={finding.severity} />
              {speaker.say(`severity.${finding.severity}`)}
            </span>
          </article>
        )
      })}
    </>
  )
}

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`
