// The project's files, as the architecture tests see them.

import { readdirSync, readFileSync } from 'node:fs'
import { join, relative, resolve } from 'node:path'

export const root = resolve(import.meta.dirname, '../..')

const notOurs = new Set(['node_modules', 'dist', '.git'])

/** Names at the top of the project, without what is installed, built or kept by git. */
export function topLevelNames(): string[] {
  return readdirSync(root)
    .filter((name) => !notOurs.has(name))
    .sort()
}

/** Paths from the root, with forward slashes, of all files below `folder`. */
export function filesBelow(folder: string): string[] {
  return entriesBelow(folder)
    .filter((entry) => entry.isFile())
    .map((entry) => pathOf(entry))
    .sort()
}

/** Paths from the root, with forward slashes, of all folders below `folder` that hold a file somewhere. */
export function foldersBelow(folder: string): string[] {
  const folders = new Set<string>()
  for (const file of filesBelow(folder)) {
    const parts = file.split('/')
    for (let depth = folder.split('/').length + 1; depth < parts.length; depth++)
      folders.add(parts.slice(0, depth).join('/'))
  }
  return [...folders].sort()
}

export function read(path: string): string {
  return readFileSync(join(root, path), 'utf8')
}

const entriesBelow = (folder: string) => readdirSync(join(root, folder), { recursive: true, withFileTypes: true })

const pathOf = (entry: { parentPath: string; name: string }) =>
  relative(root, join(entry.parentPath, entry.name)).replaceAll('\\', '/')
