/** Feelers: a pace, or a hand and both feet, set anywhere on the ground; the engine says what would reach a body there. */
import { useStore } from 'zustand'
import { amperes, exposureTime, say, volts } from '../../../text'
import { type Felt, gradeStore } from '../../stores/gradeStore'
import { useSpeaker } from '../useSpeaker'
import { VerdictWords } from './ExposureRow'

export interface FeelersEntry {
  readonly kind: 'pace' | 'touch'
  /** Metres east and north of the pole, as written. */
  readonly east: string
  readonly north: string
}

export const noFeelers: FeelersEntry = { kind: 'pace', east: '', north: '' }

const farthest = 100

/** The point that was written; undefined while it is none, or further away than anything is drawn. */
export function findPoint({ east, north }: FeelersEntry): { x: number; y: number } | undefined {
  const [x, y] = [east, north].map((written) => (written.trim() === '' ? NaN : Number(written.replace(',', '.'))))
  const isPlace = (metres: number | undefined): metres is number => metres !== undefined && Math.abs(metres) <= farthest
  return isPlace(x) && isPlace(y) ? { x, y } : undefined
}

export interface FeelersBoxProps {
  readonly entry: FeelersEntry
  readonly onChange: (entry: FeelersEntry) => void
}

export function FeelersBox({ entry, onChange }: FeelersBoxProps) {
  const felt = useStore(gradeStore, (grade) => grade.felt)
  const kinds = ['pace', 'touch'] as const
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
        {(['east', 'north'] as const).map((side) => (
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
        ))}
      </div>
      <p className='feelersread' aria-live='polite'>
        {findPoint(entry) && felt ? <Reading felt={felt} /> : <span className='q'>{say('feelers.nowhere')}</span>}
      </p>
    </section>
  )
}

function Reading({ felt: { kind, exposure } }: { felt: Felt }) {
  const speaker = useSpeaker()
  if (!exposure) return <span>{say(kind === 'touch' ? 'feelers.nothing' : 'feelers.level')}</span>
  return (
    <>
      {say(`feelers.${kind}Reads`, {
        voltage: volts(exposure.prospectiveVoltage),
        current: amperes(exposure.bodyCurrent),
        limit: volts(exposure.limit),
        time: exposureTime(exposure),
      })}{' '}
      <VerdictWords exposure={exposure} speaker={speaker} />
    </>
  )
}
