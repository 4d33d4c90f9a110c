/** The published figures, tried in the reader's own browser: what was expected, within what, and what came out. */
import { useEffect } from 'react'
import { useStore } from 'zustand'
import type { CaseResult, ComparedValue } from '../../../reports/qualification'
import { say } from '../../../text'
import { figuresStore, stopFigures, tryFigures } from '../../stores/figuresStore'
import { goTo } from '../../stores/viewStore'

export default function FiguresPlace() {
  const results = useStore(figuresStore, (figures) => figures.results)
  const models = [...new Set(results.map((it) => it.model))].sort()
  useEffect(() => {
    if (figuresStore.getState().results.length === 0) tryFigures()
    return stopFigures
  }, [])
  return (
    <main className='stack figuresplace'>
      <div className='livehead'>
        <Heading />
        <button type='button' className='btn go' onClick={() => goTo('depot')}>
          {say('figures.back')}
        </button>
      </div>
      <Running />
      <section className='stack scroll grow' tabIndex={0} aria-label={say('figures.cases')}>
        <p className='q'>{say('figures.how')}</p>
        {models.map((model) => (
          <Family key={model} model={model} results={results.filter((it) => it.model === model)} />
        ))}
      </section>
    </main>
  )
}

function Heading() {
  const results = useStore(figuresStore, (figures) => figures.results)
  const count = useStore(figuresStore, (figures) => figures.count)
  const met = results.filter((it) => it.passed).length
  return (
    <h1 className='head' aria-live='polite'>
      {count ? say('figures.met', { met, tried: results.length, all: count.all }) : say('figures.loading')}
    </h1>
  )
}

function Running() {
  const { results, count, isRunning, failure } = useStore(figuresStore)
  if (failure)
    return (
      <div className='working' role='alert'>
        <span>{say('figures.failed', { reason: failure })}</span>
        <button type='button' className='btn' onClick={tryFigures}>
          {say('working.again')}
        </button>
      </div>
    )
  if (!isRunning && count && results.length === count.total)
    return (
      <div className='working' role='status'>
        <span>{say('figures.done')}</span>
        <button type='button' className='btn' onClick={tryFigures}>
          {say('figures.again')}
        </button>
      </div>
    )
  return (
    <div className='working' role='status'>
      <span>{say('figures.running', { done: results.length, total: count?.total ?? '–' })}</span>
      <progress value={results.length} max={count?.total ?? 1} aria-label={say('figures.progress')} />
      <button type='button' className='btn' onClick={isRunning ? stopFigures : tryFigures}>
        {say(isRunning ? 'working.stop' : 'figures.again')}
      </button>
    </div>
  )
}

function Family({ model, results }: { model: string; results: readonly CaseResult[] }) {
  const failedFirst = [...results].sort((a, b) => Number(a.passed) - Number(b.passed))
  return (
    <>
      <h2 className='sec gap'>
        {inWords(model)}
        <span className='q'>
          {say('figures.family', { met: results.filter((it) => it.passed).length, all: results.length })}
        </span>
      </h2>
      <table className='figurestable'>
        <thead>
          <tr>
            <th>{say('figures.case')}</th>
            <th>{say('figures.value')}</th>
            <th className='num'>{say('figures.expected')}</th>
            <th className='num'>{say('figures.within')}</th>
            <th className='num'>{say('figures.got')}</th>
            <th>{say('figures.verdict')}</th>
          </tr>
        </thead>
        {failedFirst.map((result) => (
          <Case key={result.id} result={result} />
        ))}
      </table>
    </>
  )
}

function Case({ result: { id, source, passed, reasons, values } }: { result: CaseResult }) {
  const rows = values.length > 0 ? values : [undefined]
  return (
    <tbody>
      {rows.map((value, i) => (
        <tr key={value?.path ?? 'none'} className={passed ? undefined : 'crit'}>
          {i === 0 && (
            <td rowSpan={rows.length}>
              <b>{inWords(id)}</b>
              <span className='q source'>{source}</span>
            </td>
          )}
          {value ? <Compared value={value} /> : <td colSpan={5}>{reasons.join('; ')}</td>}
        </tr>
      ))}
    </tbody>
  )
}

function Compared({ value: { path, expected, tolerance, got, isMet } }: { value: ComparedValue }) {
  return (
    <>
      <td>{inWords(path)}</td>
      <td className='num n'>{shown(expected)}</td>
      <td className='num n'>{within(tolerance)}</td>
      <td className='num n'>{got === undefined ? '–' : shown(got)}</td>
      <td>{say(isMet ? 'figures.isMet' : 'figures.isNotMet')}</td>
    </>
  )
}

/** A name of the case file as words. */
function inWords(name: string): string {
  const words = name
    .replace(/[-./_]+/g, ' ')
    .replace(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`)
    .trim()
  return words.charAt(0).toUpperCase() + words.slice(1)
}

const shown = (value: number | string): string =>
  typeof value === 'string' ? value : String(Number(value.toPrecision(7)))

function within({ relative, absolute }: ComparedValue['tolerance']): string {
  const parts = [
    ...(relative === undefined ? [] : [`${shown(relative * 100)} %`]),
    ...(absolute === undefined ? [] : [shown(absolute)]),
  ]
  return parts.length === 0 ? '–' : parts.join(say('figures.or'))
}
