/** One value of an order, to be filled in: figure, choice, point, outline or words. Nothing comes filled. */
import type { KeyboardEvent } from 'react'
import type { Value } from '../../../engine'
import { type Speaker, say } from '../../../text'
import { type Field, ticked } from '../../stores/affords'
import { AimPad, type GroundSpot } from './AimPad'
import { QuantityField } from './QuantityField'

/** As written so far: a figure or words, the choices, the points. */
export interface Entry {
  readonly text?: string
  readonly chosen?: readonly string[]
  readonly points?: readonly GroundSpot[]
}

export interface FieldEntryProps {
  readonly act: string
  readonly field: Field
  readonly entry: Entry
  readonly speaker: Speaker
  readonly onChange: (entry: Entry) => void
  /** Filled by one key or press: goes on to the next field, or gives the order. */
  readonly onFilled: (entry: Entry) => void
}

export function FieldEntry(props: FieldEntryProps) {
  const { act, field, entry, speaker, onChange, onFilled } = props
  const label = wordOf(speaker, act, field.name)
  switch (field.kind) {
    case 'one':
    case 'many':
      return <Choices {...props} label={label} />
    case 'point':
      return <AimPad label={label} set={entry.points ?? []} onSet={(at) => onFilled({ points: [at] })} />
    case 'outline':
      return <OutlineEntry label={label} entry={entry} onChange={onChange} onFilled={onFilled} />
    case 'number':
      return (
        <QuantityField
          label={label}
          unit={speaker.say(`unit.${field.unit}`)}
          low={field.low}
          high={field.high}
          step={field.step}
          value={entry.text ?? ''}
          onChange={(text) => onChange({ text })}
        />
      )
    default:
      return (
        <label className='field'>
          {label}
          <input
            className='entry'
            value={entry.text ?? ''}
            onChange={(event) => onChange({ text: event.target.value })}
          />
        </label>
      )
  }
}

/** Two opposite corners make a rectangle; *corner by corner* closes where it began. */
function OutlineEntry({
  label,
  entry,
  onChange,
  onFilled,
}: { label: string } & Pick<FieldEntryProps, 'entry' | 'onChange' | 'onFilled'>) {
  const points = entry.points ?? []
  const isFree = entry.text === 'free'
  return (
    <div>
      <div className='seg' role='radiogroup' aria-label={say('outline.how')}>
        {['rectangle', 'free'].map((how) => (
          <button
            key={how}
            type='button'
            role='radio'
            tabIndex={-1}
            className='btn'
            aria-checked={isFree === (how === 'free')}
            onClick={() => onChange({ text: how, points: [] })}
          >
            {say(how === 'free' ? 'outline.free' : 'outline.rectangle')}
          </button>
        ))}
      </div>
      <AimPad
        label={label}
        set={points}
        onSet={(at) => {
          if (isFree) onChange({ ...entry, points: [...points, at] })
          else if (points.length === 0) onChange({ ...entry, points: [at] })
          else onFilled({ ...entry, points: rectangle(points[0]!, at) })
        }}
      />
      {isFree && <p className='note'>{say('outline.corners', { count: points.length })}</p>}
    </div>
  )
}

/** From the south-west corner round by the east. */
function rectangle(a: GroundSpot, b: GroundSpot): readonly GroundSpot[] {
  const [west, east] = [Math.min(a.x, b.x), Math.max(a.x, b.x)]
  const [south, north] = [Math.min(a.y, b.y), Math.max(a.y, b.y)]
  return [
    { x: west, y: south },
    { x: east, y: south },
    { x: east, y: north },
    { x: west, y: north },
  ]
}

const wordOf = (speaker: Speaker, act: string, name: string): string =>
  speaker.has(`value.${act}.${name}`) ? speaker.say(`value.${act}.${name}`) : speaker.say(`value.${name}`)

/** Words of a choice: of this act, or of the thing or person it names. */
export function choiceWord(speaker: Speaker, act: string, name: string, choice: string): string {
  if (name === ticked) return choice
  const keys = [
    `choice.${act}.${choice}`,
    `choice.${name}.${choice}`,
    `choice.${choice}`,
    `thing.${choice}`,
    `person.${choice}`,
  ]
  const key = keys.find((each) => speaker.has(each))
  return key ? speaker.say(key) : choice
}

function Choices({
  field,
  label,
  act,
  entry,
  speaker,
  onChange,
  onFilled,
}: FieldEntryProps & { readonly label: string }) {
  const isMany = field.kind === 'many'
  const chosen = entry.chosen ?? []
  const pick = (choice: string) => {
    if (!isMany) return onFilled({ chosen: [choice] })
    onChange({ chosen: chosen.includes(choice) ? chosen.filter((it) => it !== choice) : [...chosen, choice] })
  }
  /** In a list of many, Space marks and Enter is done; Control A marks all. */
  const onKeyDown = (event: KeyboardEvent) => {
    if (!isMany) return
    if (event.key === 'Enter') onFilled(entry)
    else if (event.key === 'a' && event.ctrlKey) onChange({ chosen: field.choices })
    else return
    event.preventDefault()
    event.stopPropagation()
  }
  return (
    <div role={isMany ? 'group' : 'radiogroup'} aria-label={label} onKeyDown={onKeyDown}>
      <div className='qlab'>{label}</div>
      {field.choices.map((choice) => (
        <button
          key={choice}
          type='button'
          role={isMany ? 'checkbox' : 'radio'}
          aria-checked={chosen.includes(choice)}
          className='pick'
          data-choice={choice}
          onClick={() => pick(choice)}
        >
          <span className={isMany ? 'box' : 'dot'} />
          {choiceWord(speaker, act, field.name, choice)}
        </button>
      ))}
    </div>
  )
}

function figureOf(text: string | undefined): number | undefined {
  if (text === undefined || text.trim() === '') return undefined
  const value = Number(text.replace(',', '.').replace('½', '.5'))
  return Number.isFinite(value) ? value : undefined
}

/** The value that goes into the order; undefined while something is missing. */
export function valueOf(field: Field, entry: Entry): Value | undefined {
  const { text, chosen, points } = entry
  if (field.kind === 'one') return chosen?.[0]
  if (field.kind === 'many') return chosen && field.choices.filter((choice) => chosen.includes(choice))
  if (field.kind === 'text') return text === '' ? undefined : text
  if (field.kind === 'point') return points?.[0]
  if (field.kind === 'outline') return points && points.length >= 3 ? points : undefined
  return figureOf(text)
}
