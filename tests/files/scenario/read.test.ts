/** Bad scenario files: all faults at once, each with path, found and allowed. */
import { describe, expect, it } from 'vitest'
import type { Issue } from '../../../src/files/issue'
import { readScenario } from '../../../src/files/scenario/read'
import { marrowBendText } from '../../support/marrowBend'

type Json = Record<string, never> & { [key: string]: Json | string | number | boolean | null | Json[] }
const good = (): Json => JSON.parse(marrowBendText()) as Json
const issuesOf = (file: unknown): readonly Issue[] => {
  const read = readScenario(JSON.stringify(file))
  return read.ok ? [] : read.issues
}
const changed = (change: (file: never) => void): readonly Issue[] => {
  const file = good()
  change(file as never)
  return issuesOf(file)
}

describe('readScenario', () => {
  it('reads the shipped scenario', () => {
    expect(issuesOf(good())).toEqual([])
  })

  it('names a wrong unit as an unknown key with the near name, and the key that is missing', () => {
    const issues = changed((file: { stay: Record<string, number> }) => {
      file.stay.fixingKOhm = 1
      delete file.stay.fixingOhm
    })
    expect(issues).toEqual([
      { path: '$.stay.fixingOhm', found: 'nothing', allowed: 'this key, once' },
      { path: '$.stay.fixingKOhm', found: 'the key "fixingKOhm"', allowed: 'no such key here; near: fixingOhm' },
    ])
  })

  it('gives all issues of a file at once, whatever their kind', () => {
    const issues = changed(
      (file: {
        frequencyHz: unknown
        weather: Record<string, unknown>
        items: { id: string; type: string; defects: string[] }[]
        crew: { startsAt: unknown; weightKg: number }[]
        work: { conductor: string }
        surprise: number
        other: number
      }) => {
        file.frequencyHz = '50'
        file.weather.windMPerS = -1
        file.items[1]!.id = file.items[0]!.id
        file.items[2]!.type = 'earth-leed'
        file.items[3]!.defects = ['woodworm']
        file.crew[0]!.startsAt = { switch: 'switch-99' }
        file.crew[1]!.weightKg = 60
        file.work.conductor = 'conductor-d'
        file.surprise = 1
        file.other = 2
      },
    )
    expect(issues.map((issue) => issue.path).sort()).toEqual([
      '$.crew[0].startsAt.switch',
      '$.crew[1].weightKg',
      '$.frequencyHz',
      '$.items[1].id',
      '$.items[2].type',
      '$.items[3].defects[0]',
      '$.other',
      '$.surprise',
      '$.weather.windMPerS',
      '$.work.conductor',
    ])
    for (const issue of issues) {
      expect(issue.found.length).toBeGreaterThan(0)
      expect(issue.allowed.length).toBeGreaterThan(0)
    }
  })

  it('refuses a newer version by name, and another format', () => {
    expect(issuesOf({ ...good(), version: 2 })).toEqual([
      { path: '$.version', found: 'earths-on/scenario version 2', allowed: expect.stringContaining('newer program') },
    ])
    expect(issuesOf({ ...good(), format: 'earths-on/run' })[0]?.path).toBe('$.format')
  })

  it.each([null, [], 1, 'x', {}])('refuses %j as a whole', (file) => {
    expect(issuesOf(file).length).toBeGreaterThan(0)
  })

  it('refuses lists where objects belong, and objects where lists belong', () => {
    expect(changed((file: Record<string, unknown>) => void (file.weather = [])).length).toBeGreaterThan(0)
    expect(
      changed((file: { items: { label: unknown }[] }) => void (file.items[0]!.label = [1])).length,
    ).toBeGreaterThan(0)
    expect(changed((file: { items: { label: unknown }[] }) => void (file.items[0]!.label = [])).length).toBeGreaterThan(
      0,
    )
    expect(changed((file: Record<string, unknown>) => void (file.items = {})).length).toBeGreaterThan(0)
  })

  it('refuses duplicate keys, reserved keys, 1e400 and trailing text in a whole file', () => {
    const text = marrowBendText()
    const bad: readonly (readonly [string, string])[] = [
      [text.replace('"frequencyHz": 50', '"frequencyHz": 50, "frequencyHz": 60'), '$.frequencyHz'],
      [text.replace('"frequencyHz": 50', '"frequencyHz": 50, "__proto__": {}'), '$.__proto__'],
      [text.replace('"frequencyHz": 50', '"frequencyHz": 1e400'), '$.frequencyHz'],
      [`${text} x`, '$'],
      [text.slice(0, text.length / 2), '$'],
    ]
    for (const [damaged, path] of bad) {
      const read = readScenario(damaged)
      expect(read.ok ? 'read' : read.issues[0]?.path).toBe(path)
    }
  })

  /** Each leaf of the shipped file, spoilt in turn: refused, or it was free to be anything of its kind. */
  it('notices any leaf that becomes null, and any key that is lost', () => {
    const spoilt: string[] = []
    const walk = (node: Json, path: string, root: Json): void => {
      for (const key of Object.keys(node)) {
        const held = node[key]!
        ;(node as Record<string, unknown>)[key] = null
        if (issuesOf(root).length === 0) spoilt.push(`${path}.${key}`)
        ;(node as Record<string, unknown>)[key] = held
        if (typeof held === 'object' && held !== null && !/feeders|items|hazards|livenings|draws/.test(key))
          walk(held as Json, `${path}.${key}`, root)
      }
    }
    const root = good()
    walk(root, '$', root)
    expect(spoilt).toEqual([])
  })
})
