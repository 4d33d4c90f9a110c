/**
 * A copy of parsed JSON with some of its parts replaced, each named by a dotted path: `feeders.f1.neutral`. In a list a
 * part of the path is an item's id, or its place from 0. What is set to null is taken out.
 */

type Tree = Record<string, unknown> | unknown[]

/** @throws on a path that leads nowhere, so that a case cannot miss what it means to change */
export function changeJson(value: unknown, changes: Readonly<Record<string, unknown>>): unknown {
  const copy: unknown = structuredClone(value)
  for (const [path, replacement] of Object.entries(changes)) put(copy, path, replacement)
  return copy
}

function put(root: unknown, path: string, replacement: unknown): void {
  const parts = path.split('.')
  const last = parts.pop()!
  const place = parts.reduce<unknown>((at, part) => (isTree(at) ? valueAt(at, part) : undefined), root)
  if (!isTree(place)) throw new Error(`set: there is no ${path} in the scenario`)
  if (!Array.isArray(place)) {
    if (replacement === null) delete place[last]
    else place[last] = replacement
    return
  }
  const index = indexIn(place, last)
  if (index < 0) throw new Error(`set: there is no ${path} in the scenario`)
  place.splice(index, 1, ...(replacement === null ? [] : [replacement]))
}

function valueAt(tree: Tree, part: string): unknown {
  return Array.isArray(tree) ? tree[indexIn(tree, part)] : tree[part]
}

/** Its id, else its place; one beyond the last place is a new item. */
function indexIn(list: readonly unknown[], part: string): number {
  const byId = list.findIndex((it) => isTree(it) && !Array.isArray(it) && it.id === part)
  if (byId >= 0) return byId
  const place = /^\d+$/.test(part) ? Number(part) : -1
  return place <= list.length ? place : -1
}

function isTree(value: unknown): value is Tree {
  return typeof value === 'object' && value !== null
}
