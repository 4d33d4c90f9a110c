/** The drawing office: a scenario or a rule pack on the board, in forms; what is wrong, what changed, what the runs then give. */
import { useDeferredValue, useEffect, useMemo } from 'react'
import { useStore } from 'zustand'
import { isObject } from '../../../files/form/formNode'
import { namesInPacks } from '../../../files/rulePack/ruleForm'
import { say } from '../../../text/office'
import { type Draft, type DraftIssue, issuesOf } from '../../stores/office/draft'
import { officeStore, reached, redo, undo } from '../../stores/office/officeStore'
import { placeText } from '../../stores/office/place'
import { dismissRuns } from '../../stores/office/runsStore'
import { BoardContext } from './boardContext'
import { Changes } from './Changes'
import { Contents } from './Contents'
import { draftNames } from './draftNames'
import { Field } from './Field'
import { Group } from './Group'
import { IssueList } from './IssueList'
import { OfficeHead } from './OfficeHead'
import { RunsTable } from './RunsTable'
import { type Section, fixed, ruleSentences, sectionsOf } from './sections'
import './office.css'

export default function OfficePlace() {
  const draft = useStore(officeStore, (office) => office.draft)
  // Typing goes first; what it makes wrong is told right after.
  const settled = useDeferredValue(draft)
  const issues = useMemo(() => (settled ? issuesOf(settled) : []), [settled])
  useOfficeKeys()
  useLeaveGuard()
  useEffect(() => dismissRuns, [])
  return (
    <main className='stack office'>
      <OfficeHead isSound={issues.length === 0} />
      {draft && settled && <Sheet draft={draft} settled={settled} issues={issues} />}
    </main>
  )
}

function Sheet({ draft, settled, issues }: { draft: Draft; settled: Draft; issues: readonly DraftIssue[] }) {
  const unfolded = useStore(officeStore, (office) => office.unfolded)
  const asked = useStore(officeStore, (office) => office.section)
  const byPlace = useMemo(() => groupByPlace(issues), [issues])
  const names = useMemo(() => new Map([...Object.entries(namesInPacks), ...draftNames(settled)]), [settled])
  const saidInRules = useMemo(() => ruleSentences(settled), [settled])
  const sections = useMemo(() => sectionsOf(draft), [draft])
  const section = sections.find((it) => it.id === asked) ?? sections[0]!
  useGoal()
  return (
    <BoardContext value={{ Field, issues: byPlace, unfolded, names, saidInRules }}>
      <div className='cols officecols grow'>
        <Contents draft={draft} sections={sections} chosen={section.id} issues={issues} />
        <section className='scroll officeform' tabIndex={0} aria-label={say('office.form')} key={section.id}>
          <h2 className='head'>{section.title}</h2>
          <SectionForm draft={draft} section={section} known={sections} />
        </section>
        <section className='scroll officechecks' tabIndex={0} aria-label={say('office.checks')}>
          <IssueList draft={draft} issues={issues} />
          <RunsTable isSound={issues.length === 0 && settled === draft} />
          <Changes draft={settled} />
        </section>
      </div>
      {[...names].map(([of, list]) => (
        <datalist key={of} id={`names-${of}`}>
          {list.map((it) => (
            <option key={it} value={it} />
          ))}
        </datalist>
      ))}
    </BoardContext>
  )
}

function SectionForm({ draft, section, known }: { draft: Draft; section: Section; known: readonly Section[] }) {
  const value = draft[section.file]
  const inOthers = known.filter((it) => it.file === section.file).flatMap((it) => it.fields.map(({ key }) => key))
  return (
    <Group
      place={[section.file]}
      node={{ kind: 'group', fields: section.fields }}
      value={isObject(value) ? value : {}}
      element={section.element}
      elsewhere={section.hasStrangers ? [...fixed, ...inOthers] : Object.keys(value)}
    />
  )
}

function groupByPlace(issues: readonly DraftIssue[]): ReadonlyMap<string, readonly DraftIssue[]> {
  const byPlace = new Map<string, readonly DraftIssue[]>()
  for (const it of issues) {
    const place = placeText(it.place)
    byPlace.set(place, [...(byPlace.get(place) ?? []), it])
  }
  return byPlace
}

/** Moves the eye to the field that was asked for, or to the nearest thing around it that is there. */
function useGoal(): void {
  const goal = useStore(officeStore, (office) => office.goal)
  useEffect(() => {
    if (goal === null) return
    const field = document.getElementById(goal) ?? nearestTo(goal)
    const within = field?.matches('[role=group]') ? field.querySelector<HTMLElement>('input, select, textarea') : null
    const target = within ?? field
    target?.scrollIntoView({ block: 'center' })
    target?.focus({ preventScroll: true })
    reached()
  }, [goal])
}

function nearestTo(goal: string): HTMLElement | null {
  const around = goal.replace(/(\.[^.[]+|\[[^\]]*\])$/, '')
  return around === goal ? null : (document.getElementById(around) ?? nearestTo(around))
}

function useOfficeKeys(): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return
      const key = event.key.toLowerCase()
      if (key !== 'z' && key !== 'y') return
      event.preventDefault()
      if (key === 'y' || event.shiftKey) redo()
      else undo()
    }
    window.addEventListener('keydown', onKey)
    return () => window.removeEventListener('keydown', onKey)
  }, [])
}

/** A browser that keeps nothing asks before the page is closed; one that keeps the draft need not. */
function useLeaveGuard(): void {
  useEffect(() => {
    const onLeave = (event: BeforeUnloadEvent) => {
      const { draft, isKept, past } = officeStore.getState()
      if (draft && !isKept && past.length > 0) event.preventDefault()
    }
    window.addEventListener('beforeunload', onLeave)
    return () => window.removeEventListener('beforeunload', onLeave)
  }, [])
}
