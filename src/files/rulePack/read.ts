/** Text of a rule pack to the engine's pack, or all of its issues; what a kind of rule takes, the engine says. */
import { actions, checkPack, gearCatalogue, type Pack } from '../../engine'
import { checkHead } from '../head'
import type { Read } from '../issue'
import { readJson } from '../json/readJson'
import { parse } from '../parse'
import { packFormat, packSchema, packVersion } from './schema'

const takes = new Map(
  [...actions.values()].map(({ id, withTypes, values = {} }) => [
    id,
    { ...(withTypes && { withTypes }), values: Object.keys(values) },
  ]),
)

export function readPack(text: string): Read<Pack> {
  const json = readJson(text)
  if (!json.ok) return json
  const head = checkHead(json.value, { format: packFormat, version: packVersion })
  if (!head.ok) return head
  const read = parse(packSchema, head.value)
  if (!read.ok) return read
  const issues = checkPack(read.value, { actions: [...actions.keys()], gearTypes: [...gearCatalogue.keys()], takes })
  return issues.length > 0 ? { ok: false, issues } : read
}
