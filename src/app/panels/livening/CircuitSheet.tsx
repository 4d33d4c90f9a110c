/** The circuit of an instant, whole: the voltage of every point and the current of every way. */
import { useEffect, useState } from 'react'
import { useStore } from 'zustand'
import { type Speaker, plain, say, seconds, timeOfDay } from '../../../text'
import { askCircuit, gradeStore } from '../../stores/gradeStore'
import type { CircuitChoice, ShownCircuit } from '../../workers/circuitOf'
import type { DrawnLivening } from '../../workers/grading'
import { useSpeaker } from '../useSpeaker'
import { Working } from './Working'
import { cornerWords } from './caseWords'
import { type CircuitPart, circuitParts, partOf } from './circuitParts'
import { pointWords } from './pointWords'

export function CircuitSheet({ drawn, onBack }: { drawn: DrawnLivening; onBack: () => void }) {
  const speaker = useSpeaker()
  const answer = useStore(gradeStore, (grade) => grade.circuit)
  const [choice, setChoice] = useState<CircuitChoice>({
    at: drawn.at,
    livening: drawn.livening,
    corner: drawn.corner,
    joint: drawn.joint,
    second: 0,
  })
  useEffect(() => askCircuit(choice), [choice])
  const [shown, setShown] = useState<ShownCircuit | null>(null)
  if (answer && 'nodes' in answer && answer !== shown) setShown(answer)
  return (
    <main className='stack livening'>
      <div className='livehead'>
        <h1 className='head'>
          {shown ? say('circuit.title', { from: seconds(shown.from), to: seconds(shown.to) }) : say('livening.working')}
        </h1>
        <button type='button' className='btn go' onClick={onBack} autoFocus>
          {say('circuit.back')}
        </button>
      </div>
      <Working />
      {shown && <Choices drawn={drawn} shown={shown} choice={choice} onChoice={setChoice} speaker={speaker} />}
      {answer && !('nodes' in answer) ? (
        <p role='alert'>
          {say('circuit.unsolvable', { reason: answer.reason, node: pointWords(answer.node, speaker) })}
        </p>
      ) : (
        shown && <Tables shown={shown} speaker={speaker} />
      )}
    </main>
  )
}

interface ChoicesProps {
  readonly drawn: DrawnLivening
  readonly shown: ShownCircuit
  readonly choice: CircuitChoice
  readonly onChoice: (choice: CircuitChoice) => void
  readonly speaker: Speaker
}

function Choices({ drawn, shown, choice, onChoice, speaker }: ChoicesProps) {
  const change = (part: Partial<CircuitChoice>) => onChoice({ ...choice, second: 0, ...part })
  const isLast = shown.to >= shown.end
  return (
    <div className='circuitrow'>
      <Choice
        label={say('circuit.moment')}
        value={String(shown.moments.findLast((it) => it <= choice.at) ?? 0)}
        options={shown.moments.map((at) => [String(at), timeOfDay(drawn.belief.sheet.startsAt + at)])}
        onChange={(at) => change({ at: Number(at), joint: 0 })}
      />
      <Choice
        label={say('circuit.livening')}
        value={choice.livening}
        options={shown.livenings.map((id) => [id, id === 'none' ? say('circuit.none') : speaker.say(`livening.${id}`)])}
        onChange={(livening) => change({ livening })}
      />
      <Choice
        label={say('circuit.corner')}
        value={choice.corner}
        options={shown.corners.map((id) => [id, cornerWords(id, speaker)])}
        onChange={(corner) => change({ corner })}
      />
      <button type='button' className='btn' disabled={isLast} onClick={() => change({ second: shown.to })}>
        {say('circuit.later')}
      </button>
      <button type='button' className='btn' disabled={choice.second === 0} onClick={() => change({})}>
        {say('circuit.start')}
      </button>
    </div>
  )
}

interface ChoiceProps {
  readonly label: string
  readonly value: string
  readonly options: readonly (readonly [string, string])[]
  readonly onChange: (value: string) => void
}

function Choice({ label, value, options, onChange }: ChoiceProps) {
  return (
    <label className='circuitchoice'>
      <span className='q'>{label}</span>
      <select className='entry' value={value} onChange={(event) => onChange(event.target.value)}>
        {options.map(([id, words], i) => (
          <option key={`${id} ${i}`} value={id}>
            {words}
          </option>
        ))}
      </select>
    </label>
  )
}

function Tables({ shown, speaker }: { shown: ShownCircuit; speaker: Speaker }) {
  return (
    <div className='cols circuitcols grow'>
      <section className='stack scroll' tabIndex={0} aria-label={say('circuit.nodes')}>
        <h2 className='sec'>
          {say('circuit.nodes')}
          <span className='q'>
            {say('circuit.counts', { nodes: shown.nodes.length, branches: shown.branches.length })}
          </span>
        </h2>
        <table>
          <thead>
            <tr>
              <th>{say('circuit.node')}</th>
              <th className='num'>{say('circuit.voltage')}</th>
              <th className='num'>{say('circuit.angle')}</th>
            </tr>
          </thead>
          {byPart(shown.nodes, (it) => [it.node]).map(([part, nodes]) => (
            <tbody key={part}>
              <PartRow part={part} columns={3} />
              {nodes.map(({ node, voltage, degrees }) => (
                <tr key={node}>
                  <td>{pointWords(node, speaker)}</td>
                  <td className='num n'>{fourFigures(voltage)} V</td>
                  <td className='num n'>{plain(degrees, 1)}°</td>
                </tr>
              ))}
            </tbody>
          ))}
        </table>
      </section>
      <section className='stack scroll' tabIndex={0} aria-label={say('circuit.branches')}>
        <h2 className='sec'>{say('circuit.branches')}</h2>
        <table>
          <thead>
            <tr>
              <th>{say('circuit.from')}</th>
              <th>{say('circuit.to')}</th>
              <th className='num'>{say('circuit.current')}</th>
              <th className='num'>{say('circuit.angle')}</th>
            </tr>
          </thead>
          {byPart(shown.branches, (it) => [it.id, it.from]).map(([part, branches]) => (
            <tbody key={part}>
              <PartRow part={part} columns={4} />
              {branches.map(({ id, from, to, current, degrees }) => (
                <tr key={id}>
                  <td>{pointWords(from, speaker)}</td>
                  <td>{pointWords(to, speaker)}</td>
                  <td className='num n'>{fourFigures(current)} A</td>
                  <td className='num n'>{plain(degrees, 1)}°</td>
                </tr>
              ))}
            </tbody>
          ))}
        </table>
      </section>
    </div>
  )
}

/** Enough to check a sum by hand. */
const fourFigures = (value: number): string => String(Number(value.toPrecision(4)))

function PartRow({ part, columns }: { part: CircuitPart; columns: number }) {
  return (
    <tr>
      <th colSpan={columns} scope='colgroup' className='part'>
        {say(`circuit.part.${part}`)}
      </th>
    </tr>
  )
}

/** Parts in the order of the sheet, those without any left out. */
function byPart<T>(
  all: readonly T[],
  idsOf: (it: T) => readonly string[],
): readonly (readonly [CircuitPart, readonly T[]])[] {
  return circuitParts
    .map((part) => [part, all.filter((it) => partOf(idsOf(it)) === part)] as const)
    .filter(([, found]) => found.length > 0)
}
