/**
 * What a schema cannot say of a scenario: ids once, and every id that is named exists. Works on the file as read, also
 * when other things in it are wrong, so that all issues come at once.
 */
import { gearCatalogue } from '../../engine'
import { foundText, type Issue } from '../issue'

type Json = Readonly<Record<string, unknown>>

const asObject = (value: unknown): Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Json) : {}
const listAt = (file: Json, key: string): readonly Json[] => {
  const value = file[key]
  return Array.isArray(value) ? value.map(asObject) : []
}
const idsAt = (file: Json, key: string): readonly unknown[] => listAt(file, key).map((it) => it.id)

export function referenceIssues(file: Json): readonly Issue[] {
  return [...duplicateIssues(file), ...danglingIssues(file), ...gearIssues(file), ...drawIssues(file)]
}

function duplicateIssues(file: Json): readonly Issue[] {
  const seen = new Set<unknown>()
  const lists: readonly (readonly [string, readonly unknown[]])[] = [
    ...['conductors', 'feeders', 'switches', 'transformers', 'embedded', 'crew', 'items', 'hazards', 'livenings'].map(
      (key) => [`$.${key}`, idsAt(file, key)] as const,
    ),
    ['$.lv.wires', idsAt(asObject(file.lv), 'wires')],
    ['$.parallels', idsAt(file, 'parallels')],
    ['$.metalwork', idsAt(file, 'metalwork')],
    ['$.grounds', idsAt(file, 'grounds')],
    ['$.sectionJumpers', idsAt(file, 'sectionJumpers')],
    ...listAt(file, 'parallels').map((it, i) => [`$.parallels[${i}].conductors`, idsAt(it, 'conductors')] as const),
  ]
  return lists.flatMap(([path, ids]) =>
    ids.flatMap((id, i) => {
      const isAgain = typeof id === 'string' && seen.has(id)
      seen.add(id)
      return isAgain
        ? [{ path: `${path}[${i}].id`, found: foundText(id), allowed: 'an id that nothing else here has' }]
        : []
    }),
  )
}

function danglingIssues(file: Json): readonly Issue[] {
  const feeders = idsAt(file, 'feeders')
  const switches = idsAt(file, 'switches')
  const work = asObject(file.work)
  const nextWork = asObject(asObject(file.nextPole).work)
  return [
    ...listAt(file, 'switches').flatMap((it, i) => missing(`$.switches[${i}].feeder`, it.feeder, feeders, 'feeder')),
    ...listAt(file, 'crew').flatMap((it, i) =>
      missing(`$.crew[${i}].startsAt.switch`, asObject(it.startsAt).switch, switches, 'switch'),
    ),
    ...listAt(file, 'parallels').flatMap((it, i) => missing(`$.parallels[${i}].feeder`, it.feeder, feeders, 'feeder')),
    ...listAt(file, 'livenings').flatMap((it, i) => [
      ...missing(`$.livenings[${i}].switch`, it.switch, switches, 'switch'),
      ...missing(`$.livenings[${i}].feeder`, it.feeder, feeders, 'feeder'),
      ...missing(`$.livenings[${i}].parallel`, it.parallel, idsAt(file, 'parallels'), 'parallel circuit'),
    ]),
    ...listAt(file, 'triggers').flatMap((it, i) =>
      (Array.isArray(it.livenings) ? it.livenings : []).flatMap((id: unknown, k) =>
        missing(`$.triggers[${i}].livenings[${k}]`, id, idsAt(file, 'livenings'), 'livening'),
      ),
    ),
    ...(Array.isArray(file.jumpers) ? file.jumpers : []).flatMap((id: unknown, i) =>
      missing(`$.jumpers[${i}]`, id, [...idsAt(file, 'conductors'), ...neutralWires(file)], 'conductor'),
    ),
    ...missing('$.nextPole.work.conductor', nextWork.conductor, idsAt(file, 'conductors'), 'conductor'),
    ...missing('$.nextPole.work.old', nextWork.old, idsAt(file, 'items'), 'item'),
    ...missing('$.nextPole.work.item', nextWork.item, idsAt(file, 'items'), 'item'),
    ...missing('$.work.conductor', work.conductor, idsAt(file, 'conductors'), 'conductor'),
    ...missing('$.work.old', work.old, idsAt(file, 'items'), 'item'),
    ...missing('$.work.item', work.item, idsAt(file, 'items'), 'item'),
  ]
}

const neutralWires = (file: Json): readonly unknown[] =>
  listAt(file, 'feeders').flatMap(({ neutralWire }) => asObject(neutralWire).id ?? [])

function missing(path: string, id: unknown, among: readonly unknown[], what: string): readonly Issue[] {
  if (typeof id !== 'string' || among.includes(id)) return []
  return [{ path, found: foundText(id), allowed: `the id of a ${what}: ${among.map(String).join(', ')}` }]
}

function gearIssues(file: Json): readonly Issue[] {
  return listAt(file, 'items').flatMap((item, i) => [
    ...(typeof item.type === 'string' && !gearCatalogue.has(item.type)
      ? [
          {
            path: `$.items[${i}].type`,
            found: foundText(item.type),
            allowed: `one of ${[...gearCatalogue.keys()].join(', ')}`,
          },
        ]
      : []),
    ...(Array.isArray(item.defects) ? item.defects : []).flatMap((defect: unknown, k) =>
      unknownDefect(`$.items[${i}].defects[${k}]`, item.type, defect),
    ),
  ])
}

function unknownDefect(path: string, type: unknown, defect: unknown): readonly Issue[] {
  const known = gearCatalogue.get(String(type))?.defects.map((it) => it.id)
  if (known === undefined || typeof defect !== 'string' || known.includes(defect)) return []
  return [{ path, found: foundText(defect), allowed: `one of ${known.join(', ')}` }]
}

function drawIssues(file: Json): readonly Issue[] {
  const draws = asObject(file.draws)
  const items = listAt(file, 'items')
  const checkFault = (path: string, fault: Json): readonly Issue[] => {
    const item = items.find((it) => it.id === fault.item)
    if (item === undefined)
      return missing(
        `${path}.item`,
        fault.item,
        items.map((it) => it.id),
        'item',
      )
    return unknownDefect(`${path}.defect`, item.type, fault.defect)
  }
  const fixed = listAt(draws, 'fixed')
  const drawable = listAt(draws, 'defects')
  return [
    ...drawable.flatMap((it, i) => [
      ...checkFault(`$.draws.defects[${i}]`, it),
      ...labelNeeded(`$.draws.defects[${i}]`, it, items),
    ]),
    ...fixed.flatMap((draw, i) => [
      ...listAt(draw, 'defects').flatMap((it, k) => checkFault(`$.draws.fixed[${i}].defects[${k}]`, it)),
      ...listAt(draw, 'hungBlades').flatMap((it, k) =>
        missing(`$.draws.fixed[${i}].hungBlades[${k}].switch`, it.switch, idsAt(file, 'switches'), 'switch'),
      ),
      ...missing(
        `$.draws.fixed[${i}].visible.livening`,
        asObject(draw.visible).livening,
        idsAt(file, 'livenings'),
        'livening',
      ),
    ]),
  ]
}

/** A fault that is found on the label must say what the label then reads. */
function labelNeeded(path: string, fault: Json, items: readonly Json[]): readonly Issue[] {
  const type = gearCatalogue.get(String(items.find((it) => it.id === fault.item)?.type))
  const isOnLabel = type?.defects.some((it) => it.id === fault.defect && it.foundBy === 'label')
  if (!isOnLabel || fault.label !== undefined) return []
  return [{ path: `${path}.label`, found: 'nothing', allowed: 'what the label reads when this is wrong' }]
}
