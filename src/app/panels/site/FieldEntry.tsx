/** One value of an order, to be filled in: figure, choice, point, outline or words. Nothing comes filled. */
import type { Value } from '../../../engine'
import { type Speaker, say } from '../../../text'
import type { Field } from '../../stores/affords'
import { QuantityField } from './QuantityField'

/** As written so far, per part of the field. */
export type Entry = Readonly<Record<string, string>>

export interface FieldEntryProps {
  readonly act: string
  readonly field: Field
  readonly entry: Entry
  readonly speaker: Speaker
  readonly onChange: (entry: Entry) => void
  /** A choice that was made by key or pointer may complete the order. */
  readonly onChosen: (entry: Entry) => void
}

export function FieldEntry({ act, field, entry, speaker, onChange, onChosen }: FieldEntryProps) {
  const label = wordOf(speaker, act, field.name)
  if (field.kind === 'one' || field.kind === 'many')
    return <Choices field={field} label={label} act={act} entry={entry} speaker={speaker} onChange={onChange} onChosen={onChosen} />
  if (field.kind === 'text')
    return (
      <label className="field">
        {label}
        <input className="entry" value={entry.text ?? ''} onChange={(event) => onChange({ ...entry, text: event.target.value })} />
      </label>
    )
  return (
    <fieldset>
      <legend className="vh">{label}</legend>
      {partsOf(field).map((part, i) => (
        <QuantityField
          key={part.name}
          label={part.name === 'figure' ? label : say(`part.${part.name}`)}
          unit={say(`unit.${part.unit}`)}
          low={part.low}
          high={part.high}
          step={part.step}
          value={entry[part.name] ?? ''}
          isFirst={i === 0}
          onChange={(value) => onChange({ ...entry, [part.name]: value })}
        />
      ))}
    </fieldset>
  )
}

interface Part {
  readonly name: 'figure' | 'east' | 'north' | 'toNorth' | 'toEast' | 'toSouth' | 'toWest'
  readonly unit: 'metre' | 'turn' | 'millimetre2' | 'none'
  readonly low: number
  readonly high: number
  readonly step: number
}

/** A point is two figures from the pole; an outline four, one to each side of it. */
function partsOf(field: Field): readonly Part[] {
  const length = { unit: 'metre', step: 0.5 } as const
  if (field.kind === 'point')
    return [
      { name: 'east', low: -20, high: 20, ...length },
      { name: 'north', low: -15, high: 15, ...length },
    ]
  if (field.kind === 'outline')
    return (['toNorth', 'toEast', 'toSouth', 'toWest'] as const).map((name) => ({ name, low: 0, high: 20, ...length }))
  return [{ name: 'figure', unit: field.unit as Part['unit'], low: field.low, high: field.high, step: field.step }]
}

const wordOf = (speaker: Speaker, act: string, name: string): string =>
  speaker.has(`value.${act}.${name}`) ? speaker.say(`value.${act}.${name}`) : speaker.say(`value.${name}`)

/** Words of a choice: of this act, or of the thing or person it names. */
export function choiceWord(speaker: Speaker, act: string, name: string, choice: string): string {
  const keys = [`choice.${act}.${choice}`, `choice.${name}.${choice}`, `choice.${choice}`, `thing.${choice}`, `person.${choice}`]
  const key = keys.find((each) => speaker.has(each))
  return key ? speaker.say(key) : choice
}

type ChoicesProps = FieldEntryProps & { readonly label: string }

function Choices({ field, label, act, entry, speaker, onChange, onChosen }: ChoicesProps) {
  const isMany = field.kind === 'many'
  const chosen = (entry.chosen ?? '').split(' ').filter(Boolean)
  const pick = (choice: string) => {
    if (!isMany) return onChosen({ chosen: encode(choice) })
    const rest = chosen.filter((it) => it !== encode(choice))
    onChange({ chosen: (rest.length < chosen.length ? rest : [...chosen, encode(choice)]).join(' ') })
  }
  return (
    <div role={isMany ? 'group' : 'radiogroup'} aria-label={label}>
      <div className="qlab">{label}</div>
      {field.choices.map((choice, i) => (
        <button
          key={choice}
          type="button"
          role={isMany ? 'checkbox' : 'radio'}
          aria-checked={chosen.includes(encode(choice))}
          className="pick"
          data-first={i === 0 || undefined}
          onClick={() => pick(choice)}
          onKeyDown={(event) => moveAmong(event)}
        >
          <span className={isMany ? 'box' : 'dot'} />
          {choiceWord(speaker, act, field.name, choice)}
        </button>
      ))}
    </div>
  )
}

/** Arrows walk along the choices without choosing. */
function moveAmong(event: React.KeyboardEvent<HTMLElement>): void {
  if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return
  event.preventDefault()
  event.stopPropagation()
  const next = event.key === 'ArrowDown' ? event.currentTarget.nextElementSibling : event.currentTarget.previousElementSibling
  if (next instanceof HTMLElement && next.matches('button')) next.focus()
}

/** A choice may hold spaces; entries are kept as text. */
const encode = (choice: string) => encodeURIComponent(choice)

const figure = (text: string | undefined): number | undefined => {
  if (text === undefined || text.trim() === '') return undefined
  const value = Number(text.replace(',', '.').replace('½', '.5'))
  return Number.isFinite(value) ? value : undefined
}

/** The value that goes into the order; undefined while something is missing. */
export function valueOf(field: Field, entry: Entry): Value | undefined {
  const chosen = (entry.chosen ?? '').split(' ').filter(Boolean).map(decodeURIComponent)
  if (field.kind === 'one') return chosen[0]
  if (field.kind === 'many') return field.choices.filter((choice) => chosen.includes(choice))
  if (field.kind === 'text') return entry.text === '' ? undefined : entry.text
  if (field.kind === 'point') {
    const [x, y] = [figure(entry.east), figure(entry.north)]
    return x === undefined || y === undefined ? undefined : { x, y }
  }
  if (field.kind === 'outline') {
    const [n, e, s, w] = [figure(entry.toNorth), figure(entry.toEast), figure(entry.toSouth), figure(entry.toWest)]
    if (n === undefined || e === undefined || s === undefined || w === undefined) return undefined
    return [
      { x: -w, y: -s },
      { x: e, y: -s },
      { x: e, y: n },
      { x: -w, y: n },
    ]
  }
  return figure(entry.figure)
}
