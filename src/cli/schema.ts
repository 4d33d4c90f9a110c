/** `schema <format>`: the JSON Schema of a format, for editors. */
import { actions } from '../engine'
import { jsonSchemaOf } from '../files/jsonSchema'
import { qualificationFormat, qualificationSchema } from '../files/qualification/schema'
import { packFormat, packSchema } from '../files/rulePack/schema'
import { runFormat } from '../files/run/run'
import { runSchema } from '../files/run/schema'
import { scenarioFormat, scenarioSchema } from '../files/scenario/schema'
import { wordsFormat, wordsSchema } from '../files/words/read'
import { UnusableInput } from './input'
import { readUsage } from './usage'

const schemas: ReadonlyMap<string, () => Parameters<typeof jsonSchemaOf>[1]> = new Map([
  [scenarioFormat, () => scenarioSchema],
  [packFormat, () => packSchema],
  [runFormat, () => runSchema(actions)],
  [wordsFormat, () => wordsSchema],
  [qualificationFormat, () => qualificationSchema as Parameters<typeof jsonSchemaOf>[1]],
])

export function schema(parameters: readonly string[]): number {
  const { places } = readUsage('schema <format>', parameters, { json: { type: 'boolean' } }, 1)
  const [asked = ''] = places
  const name = asked.includes('/') ? asked : `earths-on/${asked}`
  const make = schemas.get(name)
  if (make === undefined || places.length > 1) {
    throw new UnusableInput([
      `no format is called ${places.join(' ')}; the formats are ${[...schemas.keys()].join(', ')}`,
    ])
  }
  console.log(JSON.stringify(jsonSchemaOf(name, make()), null, 2))
  return 0
}
