/**
 * What the browser keeps for us between visits, in its own storage of this origin. A browser may refuse or be full: then
 * everything goes on in memory, and `isKept` is false, so that the sheet can say so and offer an export.
 */
const prefix = 'earths-on/'

export interface Keep {
  readonly isKept: () => boolean
  read(name: string): unknown
  /** As it lies there, whether or not it can be read. */
  readText(name: string): string | null
  /** False when it could not be written. */
  write(name: string, value: unknown): boolean
  remove(name: string): void
  names(start: string): readonly string[]
}

function makeKeep(storage: Storage | undefined): Keep {
  const memory = new Map<string, string>()
  let isKept = storage !== undefined
  const get = (name: string): string | null => {
    const held = memory.get(name)
    if (held !== undefined) return held
    try {
      return storage?.getItem(prefix + name) ?? null
    } catch {
      isKept = false
      return null
    }
  }
  return {
    isKept: () => isKept,
    readText: get,
    read(name) {
      const text = get(name)
      if (text === null) return undefined
      try {
        return JSON.parse(text) as unknown
      } catch {
        return undefined
      }
    },
    write(name, value) {
      const text = JSON.stringify(value)
      try {
        if (!storage) throw new Error('no storage')
        storage.setItem(prefix + name, text)
        memory.delete(name)
        isKept = true
        return true
      } catch {
        memory.set(name, text)
        isKept = false
        return false
      }
    },
    remove(name) {
      memory.delete(name)
      try {
        storage?.removeItem(prefix + name)
      } catch {
        isKept = false
      }
    },
    names(start) {
      const found = new Set([...memory.keys()].filter((name) => name.startsWith(start)))
      try {
        for (let i = 0; storage && i < storage.length; i++) {
          const key = storage.key(i)
          if (key?.startsWith(prefix + start)) found.add(key.slice(prefix.length))
        }
      } catch {
        isKept = false
      }
      return [...found].sort()
    },
  }
}

/** Asking for the storage itself may be refused. */
function findStorage(): Storage | undefined {
  try {
    return globalThis.localStorage
  } catch {
    return undefined
  }
}

export const keep = makeKeep(findStorage())
