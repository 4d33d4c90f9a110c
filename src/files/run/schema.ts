/** `earths-on/run`, version 1. */
import * as v from 'valibot'
import { parts, type Action } from '../../engine'
import { amperes, choice, id, list, numberChoice, optional, shape, text, whole } from '../shape'
import { orderSchema } from './orderFields'
import { runFormat, runVersion, type Run } from './run'

const digest = (): v.GenericSchema<unknown, string> => {
  const allowed = 'a digest of 64 hexadecimal digits'
  return v.pipe(v.string(allowed), v.regex(/^[0-9a-f]{64}$/, allowed))
}

const finding = v.strictTuple([text(80), whole(0, 1_000_000)], 'a rule and a job second') as v.GenericSchema<
  unknown,
  readonly [string, number]
>

const expectation = shape({
  outcome: choice('pass', 'fail', 'provisional'),
  findings: list(finding, 0, 10_000),
  exposures: list(
    shape({
      person: text(40),
      path: text(40),
      at: whole(0, 1_000_000),
      zone: choice('AC-1', 'AC-2', 'AC-3', 'AC-4.1', 'AC-4.2', 'AC-4.3'),
      current: amperes(0, 1e6),
    }),
    0,
    10_000,
  ),
})

const schemaByActions = new WeakMap<ReadonlyMap<string, Action>, v.GenericSchema<unknown, Run>>()

export function runSchema(actions: ReadonlyMap<string, Action>): v.GenericSchema<unknown, Run> {
  const known = schemaByActions.get(actions) ?? makeSchema(actions)
  schemaByActions.set(actions, known)
  return known
}

function makeSchema(actions: ReadonlyMap<string, Action>): v.GenericSchema<unknown, Run> {
  const file = shape({
    format: choice(runFormat),
    version: numberChoice(runVersion),
    scenario: id(),
    scenarioDigest: digest(),
    pack: id(),
    packDigest: digest(),
    engine: whole(1, 1_000_000),
    seed: whole(0, 4_294_967_295),
    purpose: choice('practise', 'assess'),
    startsAt: choice(...parts),
    shown: optional(whole(0, 20_000)),
    preparedBy: optional(digest()),
    orders: { suffix: '', key: 'actions', schema: list(orderSchema(actions), 0, 20_000) },
    expect: optional(expectation),
  })
  return v.pipe(
    file,
    v.transform(({ format: _format, version: _version, ...run }): Run => run),
  ) as v.GenericSchema<unknown, Run>
}
