/**
 * Cases against which the physics is checked, from published standards and handbooks: every third of them is tried in
 * the browser, in order of id, so that the third is the same for everybody.
 */
import { readQualification } from '../../files/qualification/readQualification'
import type { QualificationCase } from '../../reports/qualification'

const texts = import.meta.glob<string>('../../../tests/qualification/**/*.json', { query: '?raw', import: 'default' })

export interface FigureCases {
  readonly third: readonly QualificationCase[]
  /** How many there are in all. */
  readonly all: number
}

/** @throws when a file of the build cannot be loaded or read */
export async function loadFigureCases(): Promise<FigureCases> {
  const files = await Promise.all(Object.values(texts).map((load) => load()))
  const cases = files.flatMap((text) => {
    const read = readQualification(text)
    if (!read.ok) throw new Error(read.issues.map((it) => `${it.path} ${it.found}`).join('; '))
    return read.value.cases
  })
  const inOrder = [...cases].sort((a, b) => (a.id < b.id ? -1 : 1))
  return { third: inOrder.filter((_, i) => i % 3 === 0), all: inOrder.length }
}
