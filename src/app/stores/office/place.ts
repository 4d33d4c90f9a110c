/** Where something stands in a draft: first which of its two files, then the keys and numbers down to it. */
import { jsonPath } from '../../../files/issue'

export type Step = string | number
export type Place = readonly Step[]

export type FileName = 'file' | 'words'

/** One text for one place; also the id of its field on the page. */
export const placeText = (place: Place): string => `${String(place[0])}${jsonPath(place.slice(1)).slice(1)}`

/** `$.rules[3].id` as steps; keys in brackets and quotes too. */
export function stepsOf(path: string): Place {
  const found = path.slice(1).matchAll(/\.([^.[]+)|\[(\d+)\]|\[("(?:[^"\\]|\\.)*")\]/g)
  return [...found].map(([, key, index, quoted]) =>
    key !== undefined ? key : index !== undefined ? Number(index) : (JSON.parse(quoted ?? '""') as string),
  )
}

export function valueAt(root: unknown, place: Place): unknown {
  return place.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null && Object.hasOwn(value, step)
        ? (value as Readonly<Record<Step, unknown>>)[step]
        : undefined,
    root,
  )
}

/** The same with another value there; undefined takes it out. What is not there on the way is made. */
export function withValue(root: unknown, [step, ...rest]: Place, value: unknown): unknown {
  if (step === undefined) return value
  const inner = withValue(valueAt(root, [step]), rest, value)
  if (Array.isArray(root) && typeof step === 'number')
    return inner === undefined ? root.toSpliced(step, 1) : root.with(step, inner)
  const others = (root ?? {}) as Readonly<Record<Step, unknown>>
  if (inner !== undefined) return { ...others, [step]: inner }
  return Object.fromEntries(Object.entries(others).filter(([key]) => key !== step))
}
