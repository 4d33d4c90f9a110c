/** A rule as a form: every parameter that its kind or its questions take, as the kinds themselves say it. */
import { readFileSync, readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { ruleBook, type ParameterSpecs } from '../../../src/engine'
import { blankOf, type FormNode } from '../../../src/files/form/formNode'
import { packForm } from '../../../src/files/rulePack/ruleForm'
import { readPack } from '../../../src/files/rulePack/read'
import { fieldsOf, unreached } from '../../support/formPlaces'

const field = (node: FormNode, key: string): FormNode => {
  if (node.kind === 'list') return field(node.item, key)
  const found = node.kind === 'group' ? node.fields.find((it) => it.key === key) : undefined
  if (!found) throw new Error(`expected a field ${key}`)
  return found.node
}

const rules = field(packForm(), 'rules')
const item = rules.kind === 'list' ? rules.item : rules
const kinds = item.kind === 'oneOf' ? item.of : []

const packs = readdirSync('scenarios/packs')

it.each(packs)('everything in the rules of %s can be edited', (id) => {
  const file: unknown = JSON.parse(readFileSync(`scenarios/packs/${id}/pack.json`, 'utf8'))
  expect(unreached(packForm(), file)).toEqual([])
})

it('there is a form for each kind of rule, with a field for each of its parameters', () => {
  expect(kinds.map((it) => it.name)).toEqual([...ruleBook.kinds.keys()])
  for (const { name, node } of kinds) {
    const wanted = { ...ruleBook.kinds.get(name)!.parameters, ...ruleBook.common }
    const parameters = field(node, 'parameters')
    if (parameters.kind !== 'group') throw new Error('expected a group')
    expect(parameters.fields.map((it) => it.key)).toEqual(Object.keys(wanted))
    expect(parameters.fields.map((it) => it.isOptional)).toEqual(
      Object.values(wanted).map((it) => it.optional === true),
    )
    expect(parameters.fields.map((it) => it.says)).toEqual(Object.values(wanted).map((it) => it.says))
  }
})

it('a question has a field for each thing that it takes', () => {
  const reached = new Set(kinds.flatMap(({ node }) => fieldsOf(field(node, 'parameters'), '', 2).map((it) => it.path)))
  const takes: ParameterSpecs = Object.assign({}, ...[...ruleBook.questions.values()].map((it) => it.takes))
  expect(Object.keys(takes).length).toBeGreaterThan(5)
  for (const name of Object.keys(takes))
    expect(
      [...reached].some((path) => path.endsWith(`.${name}`)),
      name,
    ).toBe(true)
})

describe('a new rule', () => {
  const file = JSON.parse(readFileSync('scenarios/packs/concrete-rod/pack.json', 'utf8')) as {
    readonly elements: readonly string[]
    readonly rules: readonly unknown[]
  }
  it.each([...ruleBook.kinds.keys()])(
    'of the kind %s has the shape that is asked for: only names are missing',
    (kind) => {
      const node = kinds.find((it) => it.name === kind)!.node
      const rule = { ...(blankOf(node) as object), id: 'new-one', element: file.elements[0], source: 'common practice' }
      const read = readPack(JSON.stringify({ ...file, rules: [rule] }))
      const faults = read.ok ? [] : read.issues
      // An empty name, or one of two parameters to choose from: nothing else is left open.
      const isOpen = (found: string) => ['""', '', '0'].includes(found) || found.startsWith('neither ')
      expect(faults.filter((it) => !isOpen(it.found)).map((it) => `${it.path} ${it.found}`)).toEqual([])
    },
  )
})
