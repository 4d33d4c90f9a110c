/** One field of the form, whatever it is: its label, how it is filled in, what may stand there, what is wrong. */
import { useState } from 'react'
import { type FormNode, type Leaf, blankOf, isFixed, isObject, turnInto } from '../../../files/form/formNode'
import { say } from '../../../text/office'
import { change } from '../../stores/office/officeStore'
import { type Place, placeText } from '../../stores/office/place'
import { Block } from './Block'
import { type FieldProps, useBoard } from './boardContext'
import { Group } from './Group'
import { Keyed, List } from './List'
import { labelOf, rangeOf } from './labels'
import { Issues } from './Issues'
import { idText } from './idText'

export function Field(props: FieldProps) {
  const { node, value } = props
  if (node.kind === 'oneOf') return <OneOf {...props} node={node} />
  if (node.kind === 'list') return <List {...props} node={node} />
  if (node.kind === 'keyed')
    return isObject(value) ? <Keyed {...props} node={node} value={value} /> : <Anew {...props} />
  if (node.kind === 'group')
    return isObject(value) ? (
      <Block {...props}>
        <Group {...props} node={node} value={value} />
      </Block>
    ) : (
      <Anew {...props} />
    )
  if (node.kind === 'row')
    return Array.isArray(value) ? <Row {...props} items={node.items} value={value} /> : <Anew {...props} />
  return <LeafRow {...props} node={node} />
}

function LeafRow({ place, node, value, label, says, tools }: FieldProps & { node: Leaf }) {
  const { issues } = useBoard()
  const id = placeText(place)
  const isWrong = issues.has(id)
  const note = [says, rangeOf(node)].filter(Boolean).join('; ')
  const about = [...(note ? [`${id} note`] : []), ...(isWrong ? [`${id} issues`] : [])].map(idText).join(' ')
  const entry = { id, 'aria-invalid': isWrong || undefined, 'aria-describedby': about || undefined } as const
  return (
    <div className='officerow'>
      <label htmlFor={id}>{label}</label>
      <div className='officeentry'>
        <Entry place={place} node={node} value={value} entry={entry} />
        {tools}
      </div>
      {note && (
        <span className='note' id={idText(`${id} note`)}>
          {note}
        </span>
      )}
      <Issues place={place} />
    </div>
  )
}

interface EntryProps {
  readonly place: Place
  readonly node: Leaf
  readonly value: unknown
  readonly entry: { readonly id: string }
}

function Entry({ place, node, value, entry }: EntryProps) {
  if (node.kind === 'flag') return <Choice place={place} of={[true, false]} value={value} entry={entry} />
  if (node.kind === 'choice')
    return isFixed(node) && value === node.of[0] ? (
      <output className='officefixed' {...entry} tabIndex={-1}>
        {shown(value)}
      </output>
    ) : (
      <Choice place={place} of={node.of} value={value} entry={entry} />
    )
  return <Typed place={place} node={node} value={value} entry={entry} />
}

function Choice({ place, of, value, entry }: Omit<EntryProps, 'node'> & { of: readonly unknown[] }) {
  const index = of.indexOf(value)
  return (
    <select
      className='entry'
      {...entry}
      value={index}
      onChange={(event) => change(place, of[Number(event.target.value)])}
    >
      {index < 0 && <option value={-1}>{value === undefined ? '' : shown(value)}</option>}
      {of.map((it, i) => (
        <option key={String(it)} value={i}>
          {shown(it)}
        </option>
      ))}
    </select>
  )
}

/** `go-on`, `goOn`: the hyphens and humps of a file are spaces here. */
const inWords = (name: string): string =>
  name.replace(/([a-z])([A-Z])(?=[a-z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`).replaceAll('-', ' ')

const shown = (value: unknown): string => {
  if (typeof value === 'boolean') return say(value ? 'office.yes' : 'office.no')
  return value === null ? say('office.none') : typeof value === 'string' ? inWords(value) : JSON.stringify(value)
}

/** What is no number yet stays as it was typed, and is an issue. */
function Typed({ place, node, value, entry }: EntryProps & { node: Extract<Leaf, { kind: 'number' | 'text' }> }) {
  const { names } = useBoard()
  const stored = value === undefined || value === null ? '' : typeof value === 'string' ? value : JSON.stringify(value)
  const [typed, setTyped] = useState({ text: stored, gives: value })
  // An undone step shows what it brought back, not what was typed.
  const text = typed.gives === value ? typed.text : stored
  const field = {
    ...entry,
    className: node.kind === 'number' ? 'entry n' : 'entry',
    value: text,
    spellCheck: node.kind === 'text' && node.most > 100,
    autoComplete: 'off',
    onChange: ({ target }: { target: { value: string } }) => {
      const figure = target.value.trim().replace(',', '.')
      const isFigure = node.kind === 'number' && figure !== '' && Number.isFinite(Number(figure))
      const gives = isFigure ? Number(figure) : target.value
      setTyped({ text: target.value, gives })
      change(place, gives, true)
    },
    onBlur: () => setTyped({ text: stored, gives: value }),
  }
  if (node.kind === 'text' && node.most >= 300) return <textarea {...field} rows={2} />
  const list = node.kind === 'text' ? namesFor(names, node, place) : undefined
  return <input {...field} inputMode={node.kind === 'number' ? 'decimal' : undefined} list={list} />
}

/** Names of a vocabulary, or those that the draft gives to things of the field's own name: `feeder`, `switch`, `item`. */
function namesFor(
  names: ReadonlyMap<string, readonly string[]>,
  node: Extract<Leaf, { kind: 'text' }>,
  place: Place,
): string | undefined {
  const keys = place.filter((it) => typeof it === 'string')
  const of = node.names?.of ?? String(keys.at(-1))
  return names.has(of) ? `names-${of}` : undefined
}

type Alternatives = Extract<FormNode, { kind: 'oneOf' }>

function OneOf({ node, ...props }: FieldProps & { node: Alternatives }) {
  const { place, value, label, tools } = props
  const index = node.which(value)
  const chosen = node.of[index]
  const name = labelOf(label, node)
  const choose = (
    <select
      className='entry'
      aria-label={say('office.kindOf', { name: label })}
      value={index}
      onChange={(event) => {
        const next = node.of[Number(event.target.value)]
        if (next) change(place, turnInto(next.node, value))
      }}
    >
      {index < 0 && <option value={-1}>{JSON.stringify(value) ?? ''}</option>}
      {node.of.map((it, i) => (
        <option key={it.name} value={i}>
          {inWords(it.name)}
        </option>
      ))}
    </select>
  )
  const isLeaf = chosen !== undefined && !['group', 'list', 'keyed', 'row', 'oneOf'].includes(chosen.node.kind)
  if (isLeaf)
    return (
      <LeafRow
        {...props}
        label={name}
        node={chosen.node as Leaf}
        tools={
          <>
            {choose}
            {tools}
          </>
        }
      />
    )
  return (
    <Block {...props}>
      <div className='officerow'>
        <span>{say('office.kind')}</span>
        <div className='officeentry'>{choose}</div>
      </div>
      {chosen?.node.kind === 'group' && isObject(value) ? (
        <Group place={place} node={chosen.node} value={value} />
      ) : (
        chosen && <Field {...props} tools={undefined} isBare node={chosen.node} />
      )}
    </Block>
  )
}

function Row({ items, value, ...props }: FieldProps & { items: readonly FormNode[]; value: readonly unknown[] }) {
  return (
    <Block {...props}>
      {items.map((node, i) => (
        <Field
          key={i}
          place={[...props.place, i]}
          node={node}
          value={value[i]}
          label={say('office.entry', { number: i + 1 })}
        />
      ))}
    </Block>
  )
}

/** Something of another shape stands there: it is shown as it is, and can be replaced. */
function Anew({ place, node, value, label, tools }: FieldProps) {
  return (
    <Block place={place} label={label} tools={tools}>
      {value !== undefined && <p className='q n officeraw'>{JSON.stringify(value)}</p>}
      <p className='q'>{say('office.wrongShape')}</p>
      <button type='button' className='btn' onClick={() => change(place, blankOf(node))}>
        {say('office.anew')}
      </button>
    </Block>
  )
}
