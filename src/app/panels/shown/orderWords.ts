/** An order in words: the act, what it is done to and with, and its figures. */
import { type Belief, type Order, type Value, type ValueSpec, actions } from '../../../engine'
import { type Speaker, plain, say, spotWords } from '../../../text'
import { thingName } from '../site/ActionSlip'
import { choiceWord, valueName } from '../site/FieldEntry'

export interface OrderWords {
  readonly act: string
  /** Thing and item by name. */
  readonly on: readonly string[]
  readonly values: readonly { readonly name: string; readonly words: string }[]
}

export function orderWords(order: Order, belief: Belief, speaker: Speaker): OrderWords {
  const specs: Readonly<Record<string, ValueSpec>> = actions.get(order.do)?.values ?? {}
  return {
    act: speaker.say(`action.${order.do}`),
    on: [order.on, order.with].flatMap((it) => (it === undefined ? [] : [thingName(speaker, belief, it)])),
    values: Object.entries(order.values).map(([name, value]) => ({
      name: valueName(speaker, order.do, name),
      words: valueWords(value, specs[name], (choice) => choiceWord(speaker, order.do, name, choice)),
    })),
  }
}

function valueWords(value: Value, spec: ValueSpec | undefined, choice: (of: string) => string): string {
  if (typeof value === 'number')
    return `${plain(value, 2)} ${spec?.kind === 'number' ? say(`unit.${spec.unit}`) : ''}`.trim()
  if (typeof value === 'boolean') return choice(String(value))
  if (typeof value === 'string') return spec?.kind === 'text' ? value : choice(value)
  if (!isList(value)) return spotWords(value)
  if (spec?.kind === 'cards') return say('shown.cards', { count: value.length })
  const named = value.filter((it) => typeof it === 'string')
  return named.length < value.length ? say('shown.corners', { count: value.length }) : named.map(choice).join(', ')
}

const isList = (value: Value): value is Extract<Value, readonly unknown[]> => Array.isArray(value)
