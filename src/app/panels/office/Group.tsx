/** The fields of a group; those that may be left out are added and taken out, strangers are shown as they are. */
import { type FormNode, blankOf, isFixed } from '../../../files/form/formNode'
import { say } from '../../../text/office'
import { change, goTo } from '../../stores/office/officeStore'
import { type Place, placeText } from '../../stores/office/place'
import { useBoard } from './boardContext'
import { Issues } from './Issues'
import { labelOf } from './labels'
import { TakeOut } from './TakeOut'

type GroupNode = Extract<FormNode, { kind: 'group' }>
type Json = Readonly<Record<string, unknown>>

interface GroupProps {
  readonly place: Place
  readonly node: GroupNode
  readonly value: Json
  readonly element?: string | undefined
  /** Keys that are no strangers although they are not among its fields. */
  readonly elsewhere?: readonly string[]
}

export function Group({ place, node, value, element, elsewhere = [] }: GroupProps) {
  const { Field } = useBoard()
  const isThere = (key: string): boolean => Object.hasOwn(value, key)
  const fields = node.fields.filter((it) => !it.isOptional || isThere(it.key))
  const left = node.fields.filter((it) => it.isOptional && !isThere(it.key))
  const strangers = Object.keys(value).filter(
    (key) => !elsewhere.includes(key) && !node.fields.some((it) => it.key === key),
  )
  return (
    <>
      {fields
        .filter((it) => !(isFixed(it.node) && !it.isOptional))
        .map((it) => {
          const label = labelOf(it.key, it.node)
          return (
            <Field
              key={it.key}
              place={[...place, it.key]}
              node={it.node}
              value={value[it.key]}
              label={label}
              says={it.says}
              element={element}
              tools={it.isOptional && <TakeOut place={[...place, it.key]} name={label} />}
            />
          )
        })}
      {strangers.map((key) => (
        <div className='officerow' key={key}>
          <span className='n'>{key}</span>
          <div className='officeentry'>
            <span className='q n officeraw' id={placeText([...place, key])} tabIndex={-1}>
              {JSON.stringify(value[key])}
            </span>
            <TakeOut place={[...place, key]} name={key} />
          </div>
          <span className='note'>{say('office.stranger')}</span>
          <Issues place={[...place, key]} />
        </div>
      ))}
      {left.length > 0 && (
        <select
          className='entry officeadd'
          aria-label={say('office.addField')}
          value=''
          onChange={(event) => {
            const field = left.find((it) => it.key === event.target.value)
            if (!field) return
            change([...place, field.key], blankOf(field.node))
            goTo([...place, field.key])
          }}
        >
          <option value=''>{say('office.addField')}</option>
          {left.map((it) => (
            <option key={it.key} value={it.key}>
              {labelOf(it.key, it.node)}
              {it.says ? `: ${it.says}` : ''}
            </option>
          ))}
        </select>
      )}
    </>
  )
}
