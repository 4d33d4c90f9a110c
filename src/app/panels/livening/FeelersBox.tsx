/**
 * Feelers: a pace, a hand and both feet set anywhere on the ground, or two hands on any two things; the engine says what
 * would reach a body there.
 */
import { useStore } from 'zustand'
import { feltWords, say, type Speaker } from '../../../text'
import { type Felt, gradeStore } from '../../stores/gradeStore'
import { useSpeaker } from '../useSpeaker'
import { VerdictWords } from './ExposureRow'
import { endWords } from './happeningWords'

export interface FeelersEntry {
  readonly kind: Felt['kind']
  /** Metres east and north of the pole, as written. */
  readonly east: string
  readonly north: string
  /** What the left and the right hand are on. */
  readonly hands: readonly [string | null, string | null]
}

export const noFeelers: FeelersEntry = { kind: 'pace', east: '', north: '', hands: [null, null] }

const farthest = 100

/** The point that was written; undefined while it is none, or further away than anything is drawn. */
export function findPoint({ kind, east, north }: FeelersEntry): { x: number; y: number } | undefined {
  if (kind === 'hands') return undefined
  const [x, y] = [east, north].map((written) => (written.trim() === '' ? NaN : Number(written.replace(',', '.'))))
  const isPlace = (metres: number | undefined): metres is number => metres !== undefined && Math.abs(metres) <= farthest
  return isPlace(x) && isPlace(y) ? { x, y } : undefined
}

/** Picked in the picture: the hand that is free takes it, else the right one moves on. */
export function pickedUp(entry: FeelersEntry, handhold: string): FeelersEntry {
  const [left, right] = entry.hands
  if (left === null) return { ...entry, hands: [handhold, right] }
  return right === null ? { ...entry, hands: [left, handhold] } : { ...entry, hands: [right, handhold] }
}

/** Of what is picked in the picture the first part that a hand can be laid on. */
export function findHandhold(handholds: readonly string[], picked: string): string | undefined {
  const name = picked === 'stay' ? 'stay-lower' : picked
  return handholds.find((it) => it === name) ?? handholds.find((it) => it.startsWith(`${name}/`))
}

export interface FeelersBoxProps {
  readonly entry: FeelersEntry
  readonly handholds: readonly string[]
  readonly onChange: (entry: FeelersEntry) => void
}

const kinds = ['pace', 'touch', 'hands'] as const

export function FeelersBox({ entry, handholds, onChange }: FeelersBoxProps) {
  const felt = useStore(gradeStore, (grade) => grade.felt)
  const isAsked = entry.kind === 'hands' ? !entry.hands.includes(null) : findPoint(entry) !== undefined
  return (
    <section className='feelers' aria-label={say('feelers.title')}>
      <h2 className='sec gap'>
        {say('feelers.title')}
        <span className='q'>{say('feelers.how')}</span>
      </h2>
      <div className='feelersrow'>
        <div className='seg' role='radiogroup' aria-label={say('feelers.title')}>
          {kinds.map((kind) => (
            <button
              key={kind}
              type='button'
              role='radio'
              className='btn'
              aria-checked={kind === entry.kind}
              onClick={() => onChange({ ...entry, kind })}
            >
              {say(`feelers.${kind}`)}
            </button>
          ))}
        </div>
        {entry.kind === 'hands' ? (
          <Hands entry={entry} handholds={handholds} onChange={onChange} />
        ) : (
          <Place entry={entry} onChange={onChange} />
        )}
      </div>
      <p className='feelersread' aria-live='polite'>
        {isAsked && felt?.kind === entry.kind ? (
          <Reading felt={felt} />
        ) : (
          <span className='q'>{say(entry.kind === 'hands' ? 'feelers.twoThings' : 'feelers.nowhere')}</span>
        )}
      </p>
    </section>
  )
}

function Place({ entry, onChange }: Omit<FeelersBoxProps, 'handholds'>) {
  return (['east', 'north'] as const).map((side) => (
    <label key={side} className='seed'>
      <span className='q'>{say(`feelers.${side}`)}</span>
      <input
        className='entry n'
        inputMode='decimal'
        value={entry[side]}
        maxLength={8}
        onChange={(event) => onChange({ ...entry, [side]: event.target.value })}
      />
    </label>
  ))
}

function Hands({ entry, handholds, onChange }: FeelersBoxProps) {
  const speaker = useSpeaker()
  const [left, right] = entry.hands
  return (['left', 'right'] as const).map((side) => (
    <label key={side} className='circuitchoice'>
      <span className='q'>{say(`feelers.${side}`)}</span>
      <select
        className='entry'
        value={(side === 'left' ? left : right) ?? ''}
        onChange={({ target }) => {
          const chosen = target.value === '' ? null : target.value
          onChange({ ...entry, hands: side === 'left' ? [chosen, right] : [left, chosen] })
        }}
      >
        <option value=''>{say('feelers.nothingChosen')}</option>
        {handholds.map((it) => (
          <option key={it} value={it}>
            {handholdWords(it, speaker)}
          </option>
        ))}
      </select>
    </label>
  ))
}

export function handholdWords(name: string, speaker: Speaker): string {
  if (name === 'stay-upper' || name === 'stay-lower') return say(`handhold.${name}`)
  if (speaker.has(`thing.${name}`)) return speaker.say(`thing.${name}`)
  const [item = '', end] = name.split('/')
  return end === undefined ? name : say('handhold.end', { item, end: endWords(end) })
}

function Reading({ felt: { kind, exposure } }: { felt: Felt }) {
  if (!exposure) return <span>{feltWords(kind, null)}</span>
  return (
    <>
      {feltWords(kind, exposure)} <VerdictWords exposure={exposure} />
    </>
  )
}
