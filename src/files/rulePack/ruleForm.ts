/** A pack as a form: its schema, and in each rule what its kind takes, as the engine tells it. */
import { actions, gearCatalogue, ruleBook, type ParameterSpec, type ParameterSpecs } from '../../engine'
import { formOf } from '../form/formOf'
import { isObject, type FormField, type FormNode } from '../form/formNode'
import { packSchema } from './schema'

type About = readonly string[]

const text = (of?: string): FormNode => ({ kind: 'text', most: 200, allowed: '', ...(of && { names: { of } }) })
const number = (low = -Infinity, high = Infinity): FormNode => ({ kind: 'number', low, high, isWhole: false })
const field = (key: string, node: FormNode, isOptional = true, says?: string): FormField => ({
  key,
  node,
  isOptional,
  ...(says && { says }),
})
const some = (item: FormNode, least = 1): FormNode => ({ kind: 'list', item, least, most: 200, canStandAlone: true })

const names = (of: string): FormNode => some(text(of === 'any' ? undefined : of))

/** What exists in the program by that name; rules are those of the pack. */
export const namesInPacks: Readonly<Record<string, readonly string[]>> = {
  action: [...actions.keys()],
  gearType: [...gearCatalogue.keys()],
  role: ruleBook.roles,
  set: ruleBook.sets,
  measure: ruleBook.measures,
  truth: ruleBook.truths,
}

/** A pack, with each rule by its kind. */
export function packForm(): FormNode {
  const file = formOf(packSchema)
  if (file.kind !== 'group') return file
  return {
    kind: 'group',
    fields: file.fields.map((it) => (it.key === 'rules' ? { ...it, node: rulesNode(it.node) } : it)),
  }
}

function rulesNode(rules: FormNode): FormNode {
  if (rules.kind !== 'list' || rules.item.kind !== 'group') return rules
  // What exactly is asked comes last: it is the longest.
  const fields = [...rules.item.fields].sort((a, b) => Number(a.key === 'parameters') - Number(b.key === 'parameters'))
  const kinds = [...ruleBook.kinds.keys()]
  return {
    ...rules,
    item: {
      kind: 'oneOf',
      of: kinds.map((kind) => ({ name: kind, node: { kind: 'group', fields: fields.map(forKind(kind)) } })),
      which: (value) => (isObject(value) ? kinds.indexOf(String(value.kind)) : -1),
    },
  }
}

function forKind(kind: string): (it: FormField) => FormField {
  const { parameters = {} } = ruleBook.kinds.get(kind) ?? {}
  return (it) => {
    if (it.key === 'kind') return { ...it, node: { kind: 'choice', of: [kind] } }
    if (it.key === 'element') return { ...it, node: text('element') }
    return it.key === 'parameters' ? { ...it, node: groupOf({ ...parameters, ...ruleBook.common }) } : it
  }
}

const groupOf = (specs: ParameterSpecs, before: readonly FormField[] = []): FormNode => ({
  kind: 'group',
  fields: [
    ...before,
    ...Object.entries(specs).map(([key, spec]) => field(key, nodeOf(spec), spec.optional === true, spec.says)),
  ],
})

function nodeOf(spec: ParameterSpec): FormNode {
  switch (spec.kind) {
    case 'pattern':
      return pattern
    case 'patterns':
      return some(pattern, Math.max(1, spec.least ?? 1))
    case 'predicate':
      return questionNode(spec.about)
    case 'predicates':
      return some(questionNode(spec.about), Math.max(1, spec.least ?? 1))
    case 'number':
      return number(spec.least, spec.most)
    case 'choice':
      return { kind: 'choice', of: spec.of }
    case 'choices':
      return some({ kind: 'choice', of: spec.of })
    case 'names':
      return names(spec.of)
    case 'flag':
      return { kind: 'choice', of: [true] }
    case 'links': {
      const part: FormNode = { kind: 'choice', of: ruleBook.parts }
      return { kind: 'list', item: { kind: 'row', items: [part, part] }, least: 1, most: 20 }
    }
    case 'literal':
      return plain
    case 'putRight':
      return { kind: 'group', fields: [field('by', some(pattern), false), field('before', some(pattern), false)] }
  }
}

const bounds: FormNode = { kind: 'group', fields: [field('least', number()), field('most', number())] }

const plainNodes = [
  { name: 'text', node: text() },
  { name: 'number', node: number() },
  { name: 'yes or no', node: { kind: 'flag' } },
] as const satisfies readonly { readonly name: string; readonly node: FormNode }[]

const whichPlain = (value: unknown): number => ['string', 'number', 'boolean'].indexOf(typeof value)

/** A text, a number, true or false. */
const plain: FormNode = { kind: 'oneOf', of: plainNodes, which: whichPlain }

const textOrNumber: FormNode = { kind: 'oneOf', of: plainNodes.slice(0, 2), which: whichPlain }

/** What a value of an act must be. */
const test: FormNode = {
  kind: 'oneOf',
  of: [
    { name: 'least and most', node: bounds },
    { name: 'one of a list', node: { kind: 'list', item: textOrNumber, least: 0, most: 100 } },
    ...plainNodes,
  ],
  which: (value) =>
    Array.isArray(value) ? 1 : isObject(value) ? 0 : whichPlain(value) < 0 ? -1 : whichPlain(value) + 2,
}

const pattern: FormNode = {
  kind: 'group',
  fields: [
    ...[...ruleBook.pattern].map(([part, of]) => field(part, names(of), part !== 'do')),
    field('values', { kind: 'keyed', value: test }),
  ],
}

const questionNodes = new Map<string, FormNode>()

/** A question by its name, with what it takes; or several of them joined. It can hold itself, so its parts are made when asked for. */
function questionNode(about: About): FormNode {
  const name = about.join(' ')
  const known = questionNodes.get(name)
  if (known) return known
  const asked = [...ruleBook.questions].filter(([, it]) => about.includes(it.about))
  const plainOnes = asked.filter(([, { takes }]) => Object.values(takes).every((it) => it.optional))
  const joined = (key: 'allOf' | 'anyOf') => ({
    name: key,
    node: { kind: 'group', fields: [lazyField(key, () => some(questionNode(about)))] } as const satisfies FormNode,
  })
  const withTakes = asked.map(([id, { takes }]) => ({
    name: `${id} …`,
    node: groupOf(takes, [field('is', { kind: 'choice', of: [id] }, false)]),
  }))
  const node: FormNode = {
    kind: 'oneOf',
    of: [
      { name: 'a question', node: { kind: 'choice', of: plainOnes.map(([id]) => id) } },
      { name: 'not', node: { kind: 'group', fields: [lazyField('not', () => questionNode(about))] } },
      joined('allOf'),
      joined('anyOf'),
      ...withTakes,
    ],
    which(value) {
      if (typeof value === 'string') return 0
      if (!isObject(value)) return -1
      if ('is' in value) {
        const index = asked.findIndex(([id]) => id === value.is)
        return index < 0 ? -1 : index + 4
      }
      return 'not' in value ? 1 : 'allOf' in value ? 2 : 'anyOf' in value ? 3 : -1
    },
  }
  questionNodes.set(name, node)
  return node
}

const lazyField = (key: string, make: () => FormNode): FormField => ({
  key,
  isOptional: false,
  get node() {
    return make()
  },
})
