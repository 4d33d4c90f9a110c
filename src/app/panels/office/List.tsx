/** Lists that grow and shrink. An entry with fields of its own is folded to one line until it is opened. */
import { useState } from 'react'
import { type FormNode, blankOf, isObject } from '../../../files/form/formNode'
import { say } from '../../../text/office'
import { change, fold, goTo, moveEntry } from '../../stores/office/officeStore'
import { type Place, placeText } from '../../stores/office/place'
import { Block } from './Block'
import { type FieldProps, issuesWithin, useBoard } from './boardContext'
import { entryName } from './labels'
import { RuleLine, RuleSentences } from './RuleParts'
import { TakeOut } from './TakeOut'

type ListNode = Extract<FormNode, { kind: 'list' }>

export function List({ node, ...props }: FieldProps & { node: ListNode }) {
  const { place, value, element } = props
  // One entry without brackets stays without them until there is a second.
  const isAlone = node.canStandAlone === true && !Array.isArray(value) && value !== undefined
  const entries: readonly unknown[] = isAlone ? [value] : Array.isArray(value) ? value : []
  const add = (entry: unknown): void => {
    change(place, [...entries, entry])
    goTo([...place, entries.length])
  }
  const isShown = (it: unknown): boolean => element === undefined || (isObject(it) && String(it.element) === element)
  return (
    <Block {...props} place={isAlone ? [...place, 'list'] : place}>
      {entries.map((it, i) =>
        isShown(it) ? (
          <ListEntry
            key={i}
            place={isAlone ? place : [...place, i]}
            node={node.item}
            value={it}
            index={i}
            count={isAlone ? 1 : entries.length}
            onCopy={() => add(it)}
          />
        ) : null,
      )}
      {entries.length < node.most && (
        <button
          type='button'
          className='btn officeadd'
          aria-label={say('office.addTo', { name: props.label })}
          onClick={() => {
            const blank = blankOf(node.item)
            add(element !== undefined && isObject(blank) ? { ...blank, element } : blank)
          }}
        >
          {say('office.add')}
        </button>
      )}
    </Block>
  )
}

interface EntryProps {
  readonly place: Place
  readonly node: FormNode
  readonly value: unknown
  readonly index: number
  readonly count: number
  readonly onCopy: () => void
}

function ListEntry(props: EntryProps) {
  const { Field } = useBoard()
  const { place, node, value, index } = props
  const isSimple = !['group', 'oneOf', 'list'].includes(node.kind)
  const label = say('office.entry', { number: index + 1 })
  if (isSimple || (node.kind === 'oneOf' && !isObject(value)))
    return <Field place={place} node={node} value={value} label={label} tools={<Tools {...props} name={label} />} />
  return <Folded {...props} />
}

function Folded(props: EntryProps) {
  const { place, node, value, index, count } = props
  const board = useBoard()
  const { Field } = board
  const id = placeText(place)
  // A single entry needs no lid.
  const isOpen = board.unfolded.has(id) || (count === 1 && place.length > 3)
  const name = entryName(value, index)
  const faults = issuesWithin(board, place)
  const isRule = place[1] === 'rules' && place.length === 3 && isObject(value)
  return (
    <div className='officefold'>
      <button
        type='button'
        className='pick'
        id={isOpen ? undefined : id}
        aria-expanded={isOpen}
        onClick={() => fold(place, !isOpen)}
      >
        <span className='tw' aria-hidden='true'>
          {isOpen ? '−' : '+'}
        </span>
        {isRule ? <RuleLine rule={value} /> : <span>{name}</span>}
        {faults > 0 && (
          <b className='crit r'>
            {faults === 1 ? say('office.oneIssue') : say('office.issueCount', { count: faults })}
          </b>
        )}
      </button>
      {isOpen && (
        <div className='officeinside'>
          <div className='officetools'>
            <Tools {...props} name={name} />
          </div>
          {isRule && <RuleSentences rule={value} />}
          <Field place={place} node={node} value={value} label={name} isBare />
        </div>
      )}
    </div>
  )
}

function Tools({ place, index, count, name, onCopy, node }: EntryProps & { name: string }) {
  return (
    <>
      {count > 1 && (
        <>
          <button
            type='button'
            className='btn plain'
            aria-label={say('office.moveUp', { name })}
            disabled={index === 0}
            onClick={() => moveEntry(place, -1)}
          >
            {say('office.up')}
          </button>
          <button
            type='button'
            className='btn plain'
            aria-label={say('office.moveDown', { name })}
            disabled={index === count - 1}
            onClick={() => moveEntry(place, 1)}
          >
            {say('office.down')}
          </button>
        </>
      )}
      {['group', 'oneOf'].includes(node.kind) && (
        <button type='button' className='btn plain' onClick={onCopy}>
          {say('office.copy')}
        </button>
      )}
      {typeof place.at(-1) === 'number' && <TakeOut place={place} name={name} />}
    </>
  )
}

type KeyedNode = Extract<FormNode, { kind: 'keyed' }>

/** Fields whose names the file chooses. */
export function Keyed({ node, ...props }: FieldProps & { node: KeyedNode; value: Readonly<Record<string, unknown>> }) {
  const { Field } = useBoard()
  const { place, value } = props
  const [key, setKey] = useState('')
  return (
    <Block {...props}>
      {Object.entries(value).map(([name, held]) => (
        <Field
          key={name}
          place={[...place, name]}
          node={node.value}
          value={held}
          label={name}
          tools={<TakeOut place={[...place, name]} name={name} />}
        />
      ))}
      <form
        className='addperson'
        onSubmit={(event) => {
          event.preventDefault()
          const name = key.trim()
          if (name === '' || Object.hasOwn(value, name)) return
          change([...place, name], blankOf(node.value))
          goTo([...place, name])
          setKey('')
        }}
      >
        <input
          className='entry'
          aria-label={say('office.key')}
          placeholder={say('office.key')}
          value={key}
          onChange={(event) => setKey(event.target.value)}
        />
        <button type='submit' className='btn'>
          {say('office.add')}
        </button>
      </form>
    </Block>
  )
}
