/** One value of an order, to be filled in: figure, choice, point, outline or words. Nothing comes filled. */
import type { KeyboardEvent } from 'react'
import type { Speaker } from '../../../text'
import { type Field, ticked } from '../../stores/affords'
import type { Entry } from '../../stores/entries'
import { AimPad } from './AimPad'
import { OutlineEntry } from './OutlineEntry'
import { QuantityField } from './QuantityField'
import { SpotFields } from './SpotFields'

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
  const label = valueName(speaker, act, field.name)
  switch (field.kind) {
    case 'one':
    case 'many':
      return <Choices {...props} label={label} />
    case 'point':
      return (
        <div>
          <AimPad label={label} set={entry.points ?? []} onSet={(at) => onFilled({ points: [at] })} />
          <SpotFields points={entry.points ?? []} most={1} onChange={(points) => onChange({ points })} />
        </div>
      )
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

export const valueName = (speaker: Speaker, act: string, name: string): string =>
  speaker.has(`value.${act}.${name}`) ? speaker.say(`value.${act}.${name}`) : speaker.say(`value.${name}`)

/** Words of a choice: of this act, or of the thing or person it names. */
export function choiceWord(speaker: Speaker, act: string, name: string, choice: string): string {
  if (name === ticked) return choice
  if (speaker.has(`choiceAs.${act}.${name}`)) return speaker.say(`choiceAs.${act}.${name}`, { choice })
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
