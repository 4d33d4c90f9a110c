/**
 * A form has every field of its format, with the format's own ranges. Compared with the JSON Schema (2020-12) of the same
 * format, which a library makes without knowing of forms, and with every file that is shipped.
 */
import { readFileSync, readdirSync, existsSync } from 'node:fs'
import type * as v from 'valibot'
import { describe, expect, it } from 'vitest'
import { blankOf, type FormNode, turnInto } from '../../../src/files/form/formNode'
import { formOf } from '../../../src/files/form/formOf'
import { jsonSchemaOf } from '../../../src/files/jsonSchema'
import { parse } from '../../../src/files/parse'
import { packSchema } from '../../../src/files/rulePack/schema'
import { livening } from '../../../src/files/scenario/parts'
import { pole } from '../../../src/files/scenario/placeParts'
import { scenarioSchema } from '../../../src/files/scenario/schema'
import { wordsSchema } from '../../../src/files/words/read'
import { fieldsOf, unreached } from '../../support/formPlaces'

interface JsonSchema {
  readonly properties?: Readonly<Record<string, JsonSchema>>
  readonly items?: JsonSchema | readonly JsonSchema[]
  readonly prefixItems?: readonly JsonSchema[]
  readonly oneOf?: readonly JsonSchema[]
  readonly anyOf?: readonly JsonSchema[]
  readonly additionalProperties?: JsonSchema | boolean
  readonly minimum?: number
  readonly maximum?: number
  readonly minItems?: number
}

interface Property {
  readonly path: string
  readonly schema: JsonSchema
}

function propertiesOf(schema: JsonSchema, path = ''): readonly Property[] {
  const { additionalProperties: more, items } = schema
  const inside = [
    ...(schema.oneOf ?? []),
    ...(schema.anyOf ?? []),
    ...(schema.prefixItems ?? []),
    ...[items ?? []].flat(),
  ]
  return [
    ...Object.entries(schema.properties ?? {}).flatMap(([key, held]) => {
      const place = path === '' ? key : `${path}.${key}`
      return [{ path: place, schema: held }, ...propertiesOf(held, place)]
    }),
    ...inside.flatMap((it) => propertiesOf(it, path)),
    ...(typeof more === 'object' ? propertiesOf(more, `${path}.*`) : []),
  ]
}

const formats: readonly (readonly [string, v.GenericSchema<unknown, unknown>])[] = [
  ['scenario', scenarioSchema],
  ['rule pack', packSchema],
  ['words', wordsSchema],
]

const unique = (paths: Iterable<string>): readonly string[] => [...new Set(paths)].sort()

describe.each(formats)('the form of a %s', (name, schema) => {
  const properties = propertiesOf(jsonSchemaOf(name, schema) as JsonSchema)
  const fields = fieldsOf(formOf(schema))

  it('has the fields of its JSON Schema, and no others', () => {
    expect(properties.length).toBeGreaterThan(3)
    expect(unique(fields.map((it) => it.path))).toEqual(unique(properties.map((it) => it.path)))
  })

  it('has the ranges of its JSON Schema', () => {
    const rangeOf = (low: number, high: number) => `${low} to ${high}`
    const ranges = (node: FormNode): readonly string[] => {
      if (node.kind === 'number') return [rangeOf(node.low, node.high)]
      if (node.kind === 'list') return ranges(node.item)
      return node.kind === 'oneOf' ? node.of.flatMap((it) => ranges(it.node)) : []
    }
    const schemaRanges = (it: JsonSchema): readonly string[] => {
      if (it.minimum !== undefined) return [rangeOf(it.minimum, it.maximum ?? Infinity)]
      const inside = [...(it.oneOf ?? []), ...(it.anyOf ?? []), ...[it.items ?? []].flat()]
      return inside.flatMap(schemaRanges)
    }
    const inForm = fields.flatMap(({ path, node }) => ranges(node).map((it) => `${path}: ${it}`))
    const inSchema = properties.flatMap(({ path, schema: held }) => schemaRanges(held).map((it) => `${path}: ${it}`))
    expect(unique(inForm)).toEqual(unique(inSchema))
  })
})

const scenarios = readdirSync('scenarios').filter((id) => existsSync(`scenarios/${id}/scenario.json`))

it.each(scenarios)('everything in the file of %s, and in its words, can be edited', (id) => {
  const file: unknown = JSON.parse(readFileSync(`scenarios/${id}/scenario.json`, 'utf8'))
  const words: unknown = JSON.parse(readFileSync(`scenarios/${id}/text.en.json`, 'utf8'))
  expect(unreached(formOf(scenarioSchema), file)).toEqual([])
  expect(unreached(formOf(wordsSchema), words)).toEqual([])
})

it('a value that the form has no entry for is told by the check above', () => {
  const form = formOf(scenarioSchema)
  expect(unreached(form, { soil: { layers: [{ resistivityKOhmM: 1 }] } })).toEqual([
    '$.soil.layers[0].resistivityKOhmM',
  ])
  expect(unreached(form, { livenings: [{ kind: 'no-such' }] })).toEqual(['$.livenings[0]'])
})

describe('what is added', () => {
  // What is left empty on purpose is a text or an id, or a list that needs its first entry's words.
  it.each([
    ['a livening', livening],
    ['a pole', pole],
  ] as const)('%s of each kind has the shape that its reader asks for', (_name, schema) => {
    const node = formOf(schema as v.GenericSchema<unknown, unknown>)
    if (node.kind !== 'oneOf') throw new Error('expected kinds')
    expect(node.of.length).toBeGreaterThan(2)
    for (const [index, kind] of node.of.entries()) {
      const blank = blankOf(kind.node)
      expect(node.which(blank)).toBe(index)
      const read = parse(schema as v.GenericSchema<unknown, unknown>, blank)
      const faults = read.ok ? [] : read.issues.filter((it) => it.found !== '""' && !/list of 0/.test(it.found))
      expect(faults, kind.name).toEqual([])
    }
  })

  it('keeps of another kind what both have', () => {
    const node = formOf(livening as v.GenericSchema<unknown, unknown>)
    if (node.kind !== 'oneOf') throw new Error('expected kinds')
    const clash = { id: 'clash-a', kind: 'clash', feeder: 'fx', phase: 'B', impedanceOhm: 0.3 }
    const kind = (name: string) => node.of.find((it) => it.name === name)!.node
    expect(turnInto(kind('neutral-raised'), clash)).toEqual({ ...clash, kind: 'neutral-raised' })
    expect(turnInto(kind('switch-closed'), clash)).toEqual({ id: 'clash-a', kind: 'switch-closed', switch: '' })
  })
})
