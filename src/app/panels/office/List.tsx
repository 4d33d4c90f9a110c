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
  const { place, value, element, tools } = props
  // One entry without brackets stays without them until there is a second.
  const isAlone = node.canStandAlone === true && !Array.isArray(value) && value !== undefined
  const entries: readonly unknown[] = isAlone ? [value] : Array.isArray(value) ? value : []
  const add = (entry: unknown): void => {
    change(place, [...entries, entry])
    goTo([...place, entries.length])
  }
  const addBlank = (): void => {
    const blank = blankOf(node.item)
    add(element !== undefined && isObject(blank) ? { ...blank, element } : blank)
  }
  const isShown = (it: unknown): boolean => element === undefined || (isObject(it) && String(it.element) === element)
  const adding = (
    <button
      type='button'
      className={isAlone ? 'btn plain' : 'btn officeadd'}
      aria-label={say('office.addTo', { name: props.label })}
      onClick={addBlank}
    >
      {say('office.add')}
    </button>
  )
  if (isAlone)
    return (
      <Alone
        {...props}
        node={node.item}
        tools={
          <>
            {adding}
            {tools}
          </>
        }
      />
    )
  return (
    <Block {...props}>
      {entries.map((it, i) =>
        isShown(it) ? (
          <ListEntry
            key={i}
            place={[...place, i]}
            node={node.item}
            value={it}
            index={i}
            count={entries.length}
            onCopy={() => add(it)}
          />
        ) : null,
      )}
      {entries.length < node.most && adding}
    </Block>
  )
}

/** The only entry of a list: no list is seen around it. */
function Alone(props: FieldProps) {
  const { Field } = useBoard()
  return <Field {...props} />
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
    return (
      <div className='officeentries'>
        <Field place={place} node={node} value={value} label={label} tools={<Tools {...props} name={label} />} />
      </div>
    )
  return <Folded {...props} />
}

function Folded(props: EntryProps) {
  const { place, node, value, index } = props
  const board = useBoard()
  const { Field } = board
  const id = placeText(place)
  const isOpen = board.unfolded.has(id)
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
            <Tools {...props} name={name} isFolded />
          </div>
          {isRule && <RuleSentences rule={value} />}
          <Field place={place} node={node} value={value} label={name} isBare />
        </div>
      )}
    </div>
  )
}

/** Of an entry of one line the ways up and down are arrows: the line is short. */
function Tools({
  place,
  index,
  count,
  name,
  onCopy,
  isFolded,
}: Omit<EntryProps, 'node'> & { name: string; isFolded?: boolean }) {
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
            {isFolded ? say('office.up') : '↑'}
          </button>
          <button
            type='button'
            className='btn plain'
            aria-label={say('office.moveDown', { name })}
            disabled={index === count - 1}
            onClick={() => moveEntry(place, 1)}
          >
            {isFolded ? say('office.down') : '↓'}
          </button>
        </>
      )}
      {isFolded && (
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
  const { Field, saidInRules } = useBoard()
  const { place, value } = props
  const isOfWords = place[0] === 'words'
  const [key, setKey] = useState('')
  return (
    <Block {...props}>
      {Object.entries(value)
        .filter(([name]) => !(isOfWords && saidInRules.has(name)))
        .map(([name, held]) => (
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
