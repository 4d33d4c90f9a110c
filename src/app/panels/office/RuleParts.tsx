/** A rule of a pack as it is read: how severe, what it asks; and its two sentences, which stand in the words. */
import { useStore } from 'zustand'
import { say } from '../../../text/office'
import { officeStore } from '../../stores/office/officeStore'
import { Pennant } from '../drawing/Marks'
import { useBoard } from './boardContext'
import { sentenceKeys, wordsIn } from './sections'

const severities = ['critical', 'major', 'minor'] as const

type Rule = Readonly<Record<string, unknown>>

const useSentences = (): Readonly<Record<string, string>> => {
  const draft = useStore(officeStore, (office) => office.draft)
  return draft ? wordsIn(draft) : {}
}

export function RuleLine({ rule }: { rule: Rule }) {
  const words = useSentences()
  const severity = severities.find((it) => it === rule.severity)
  const [asks] = sentenceKeys(rule)
  return (
    <>
      <span>
        {words[asks] || String(rule.id)}
        <br />
        <span className='q n'>{String(rule.id)}</span> <span className='q'>{String(rule.source)}</span>
      </span>
      <span className={severity === 'critical' ? 'sev crit r' : 'sev r'}>
        {severity && <Pennant severity={severity} />}
        {String(rule.severity)}
      </span>
    </>
  )
}

export function RuleSentences({ rule }: { rule: Rule }) {
  const { Field } = useBoard()
  const words = useSentences()
  const [asks, reason] = sentenceKeys(rule)
  const node = { kind: 'text', most: 2000, allowed: '' } as const
  return (
    <>
      <Field place={['words', 'words', asks]} node={node} value={words[asks]} label={say('office.sentence')} />
      <Field place={['words', 'words', reason]} node={node} value={words[reason]} label={say('office.reason')} />
    </>
  )
}
