/**
 * What a look told, by name: the last part of what it says, and behind `@` the end of the lead it speaks of. `sound` when
 * nothing was to be seen.
 */
import type { Evidence } from '../../engine'

export function findFinding({ says, values }: Pick<Evidence, 'says' | 'values'>): string | undefined {
  const name = /^gear\.(?:.+\.)?look\.(.+)$/.exec(says)?.[1]
  return name === undefined || values.end === undefined ? name : `${name}@${values.end}`
}
