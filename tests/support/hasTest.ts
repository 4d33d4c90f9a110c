/** Whether a test file has a test of a name: for tables that say where something is shown, and must not go stale. */
import { readFileSync } from 'node:fs'

/**
 * @param folder of the table itself, `import.meta.dirname`
 * @param file beside it, without its ending
 * @param name how the test's name begins
 */
export function hasTest(folder: string, file: string, name: string): boolean {
  const text = readFileSync(`${folder}/${file}.test.ts`, 'utf8')
  return new RegExp(`(it|each)\\b[^\\n]*\\n?[^\\n]*['\`]${escaped(name)}`).test(text)
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
}
