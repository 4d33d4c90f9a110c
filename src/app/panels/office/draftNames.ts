/** Names that a draft gives to its things, by the fields that ask for such a name. */
import { gearCatalogue } from '../../../engine'
import { isObject } from '../../../files/form/formNode'
import type { Draft } from '../../stores/office/draft'

/** Lists of a scenario whose entries have ids, by the field that names one of them. */
const lists: Readonly<Record<string, readonly string[]>> = {
  feeder: ['feeders'],
  switch: ['switches'],
  item: ['items'],
  old: ['items'],
  wire: ['lv', 'wires'],
  conductor: ['conductors'],
  onto: ['conductors'],
  parallel: ['parallels'],
  transformer: ['transformers'],
  source: ['embedded'],
  livening: ['livenings'],
  livenings: ['livenings'],
}

export function draftNames({ kind, file }: Draft): ReadonlyMap<string, readonly string[]> {
  if (kind === 'pack')
    return new Map([
      ['element', Array.isArray(file.elements) ? file.elements.map(String) : []],
      ['rule', idsOf(file.rules)],
    ])
  const types = [...gearCatalogue.values()]
  const inUse = types.flatMap((it) => it.defects.map(({ id }) => id))
  return new Map([
    ...Object.entries(lists).map(
      ([name, path]) =>
        [name, idsOf(path.reduce<unknown>((it, key) => (isObject(it) ? it[key] : undefined), file))] as const,
    ),
    ['type', types.map(({ id }) => id)],
    ['defect', [...new Set(inUse)].sort()],
    ['defects', [...new Set(inUse)].sort()],
  ])
}

const idsOf = (list: unknown): readonly string[] =>
  Array.isArray(list) ? list.flatMap((it: unknown) => (isObject(it) && typeof it.id === 'string' ? [it.id] : [])) : []
