/** Places on the command line to texts: a file, a folder, `-` for standard input. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import type { Issue, Read } from '../files/issue'

/** Why the input cannot be used; everything that was found, a line each. Ends a verb with exit 2. */
export class UnusableInput extends Error {
  override readonly name = 'UnusableInput'

  constructor(readonly lines: readonly string[]) {
    super(lines.join('\n'))
  }
}

/** Larger is not read at all; the reader's own limit is far below. */
const mostBytes = 64_000_000

/** @throws UnusableInput when there is no such file */
export function readText(place: string): string {
  try {
    if (place !== '-' && statSync(place).size > mostBytes) throw new Error(`larger than ${mostBytes} bytes`)
    return readFileSync(place === '-' ? 0 : place, 'utf8')
  } catch (error) {
    throw new UnusableInput([`${place}: ${error instanceof Error ? error.message : String(error)}`])
  }
}

/** A folder stands for the file in it. */
export function fileIn(place: string, name: string): string {
  return place !== '-' && isFolder(place) ? join(place, name) : place
}

export function isFolder(place: string): boolean {
  return existsSync(place) && statSync(place).isDirectory()
}

export function folderEntries(place: string): readonly string[] {
  return readdirSync(place).sort()
}

export function issueLine(place: string, { path, found, allowed }: Issue): string {
  return `${place}: ${path}: found ${found}; allowed: ${allowed}`
}

/** Gathers the faults of several files, so that all are told at once. */
export class Gathered {
  readonly lines: string[] = []

  /** The value, or nothing and its issues kept. */
  take<T>(place: string, read: () => Read<T>): T | undefined {
    try {
      const result = read()
      if (result.ok) return result.value
      this.lines.push(...result.issues.map((issue) => issueLine(place, issue)))
    } catch (error) {
      if (!(error instanceof UnusableInput)) throw error
      this.lines.push(...error.lines)
    }
    return undefined
  }

  /** @throws UnusableInput when anything was wrong */
  settle(): void {
    if (this.lines.length > 0) throw new UnusableInput(this.lines)
  }
}
