// What a form reaches, and what a file holds, as paths without the numbers of lists: `feeders.earthFault.curve`.

import type { FormNode } from '../../src/files/form/formNode'

export interface Reached {
  readonly path: string
  readonly node: FormNode
}

/** Every field of a form, groups included, in every alternative; a form that holds itself is followed `depth` fields down. */
export function fieldsOf(node: FormNode, path = '', depth = 8): readonly Reached[] {
  if (depth < 0) return []
  switch (node.kind) {
    case 'group':
      return node.fields.flatMap((it) => {
        const place = path === '' ? it.key : `${path}.${it.key}`
        return [{ path: place, node: it.node }, ...fieldsOf(it.node, place, depth - 1)]
      })
    case 'list':
      return fieldsOf(node.item, path, depth)
    case 'row':
      return node.items.flatMap((it) => fieldsOf(it, path, depth))
    case 'keyed':
      return fieldsOf(node.value, `${path}.*`, depth - 1)
    case 'oneOf':
      return node.of.flatMap((it) => fieldsOf(it.node, path, depth))
    default:
      return []
  }
}

/** The values of a file that no entry of the form would show, by path: empty when everything can be edited. */
export function unreached(node: FormNode, value: unknown, path = '$'): readonly string[] {
  const isBag = typeof value === 'object' && value !== null && !Array.isArray(value)
  switch (node.kind) {
    case 'group':
      if (!isBag) return [path]
      return Object.entries(value).flatMap(([key, held]) => {
        const field = node.fields.find((it) => it.key === key)
        return field ? unreached(field.node, held, `${path}.${key}`) : [`${path}.${key}`]
      })
    case 'keyed':
      if (!isBag) return [path]
      return Object.entries(value).flatMap(([key, held]) => unreached(node.value, held, `${path}.${key}`))
    case 'list': {
      if (!Array.isArray(value)) return node.canStandAlone ? unreached(node.item, value, path) : [path]
      return value.flatMap((it, i) => unreached(node.item, it, `${path}[${i}]`))
    }
    case 'row':
      if (!Array.isArray(value) || value.length !== node.items.length) return [path]
      return node.items.flatMap((it, i) => unreached(it, value[i], `${path}[${i}]`))
    case 'oneOf': {
      const chosen = node.of[node.which(value)]
      return chosen ? unreached(chosen.node, value, path) : [path]
    }
    case 'number':
      return typeof value === 'number' && value >= node.low && value <= node.high ? [] : [path]
    case 'text':
      return typeof value === 'string' ? [] : [path]
    case 'flag':
      return typeof value === 'boolean' ? [] : [path]
    case 'choice':
      return node.of.includes(value as string) ? [] : [path]
  }
}
