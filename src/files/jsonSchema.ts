/** A format as a JSON Schema, for editors: made from the same schema that reads the file. */
import { toJsonSchema, type ConversionConfig } from '@valibot/to-json-schema'
import type * as v from 'valibot'
import { alternativesOf } from './shape'

type JsonSchema = ReturnType<typeof toJsonSchema>
type AnySchema = v.GenericSchema<unknown, unknown>

export function jsonSchemaOf(title: string, schema: AnySchema): JsonSchema {
  return { $schema: 'https://json-schema.org/draft/2020-12/schema', title, ...convert(schema) }
}

/** Checks that a JSON Schema cannot say (near names, ids that exist) are left to reading. */
function convert(schema: AnySchema): JsonSchema {
  // Alternatives are written out in place; what the converter keeps apart for them is not referred to.
  const converted = Object.entries(toJsonSchema(schema as never, config))
  return Object.fromEntries(converted.filter(([key]) => key !== '$schema' && key !== '$defs'))
}

const config: ConversionConfig = {
  typeMode: 'input',
  errorMode: 'ignore',
  overrideSchema: ({ valibotSchema, jsonSchema }) => {
    const alternatives = alternativesOf(valibotSchema)
    const [only, ...others] = alternatives ?? []
    if (only) return others.length === 0 ? convert(only) : { oneOf: [only, ...others].map(convert) }
    return valibotSchema.type === 'loose_object' ? { ...jsonSchema, additionalProperties: false } : null
  },
}
