/**
 * `earths-on/rule-pack`, version 1: an employer's rules as data. What parameters a rule takes, its kind says; they are
 * checked by the engine's registry of kinds. Keys of its words are left out where they are `<id>.asks`, `<id>.reason`.
 */
import * as v from 'valibot'
import type { Pack } from '../../engine'
import { boolean, choice, date, id, list, number, numberChoice, optional, record, shape, text } from '../shape'

export const packFormat = 'earths-on/rule-pack'
export const packVersion = 1

const rule = shape({
  id: id(),
  kind: id(),
  parameters: record(v.unknown(), 'an object of parameters'),
  severity: choice('critical', 'major', 'minor'),
  element: id(),
  asks: optional(text()),
  reason: optional(text()),
  source: text(300),
  effectiveFrom: optional(date()),
})

const file = shape({
  format: choice(packFormat),
  version: numberChoice(packVersion),
  id: id(),
  edition: text(40),
  effectiveFrom: date(),
  permitAfter: choice('isolation', 'earthsAtIsolationPoints'),
  lvGuard: choice('twoCentral', 'reach'),
  onCritical: choice('goOn', 'stop'),
  planOnSite: boolean(),
  elements: list(id(), 1, 60),
  floors: optional(
    record(shape({ majors: optional(number(0, 100)), minorsKept: optional(number(0, 1)) }), 'floors by element'),
  ),
  rules: list(rule, 0, 1000),
})

export const packSchema = v.pipe(
  file,
  v.transform(
    ({ format: _format, version: _version, rules, ...pack }): Pack => ({
      ...pack,
      rules: rules.map((it) => ({ ...it, asks: it.asks ?? `${it.id}.asks`, reason: it.reason ?? `${it.id}.reason` })),
    }),
  ),
) as v.GenericSchema<unknown, Pack>
