import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readPack } from '../../../src/files/rulePack/read'
import type { Issue } from '../../../src/files/issue'

const packs = new URL('../../../scenarios/packs/', import.meta.url)
const textOf = (slug: string): string => readFileSync(new URL(`${slug}/pack.json`, packs), 'utf8')
const slugs = readdirSync(packs)
const issuesOf = (file: unknown): readonly Issue[] => {
  const read = readPack(JSON.stringify(file))
  return read.ok ? [] : read.issues
}
const first = (): { rules: Record<string, unknown>[]; elements: string[] } => JSON.parse(textOf(slugs[0]!)) as never

describe('rule packs', () => {
  it.each(slugs)('%s is read', (slug) => {
    expect(readPack(textOf(slug))).toMatchObject({ ok: true })
  })

  it('refuse unknown kinds, elements, severities, keys and an id used twice', () => {
    const spoilt = (
      change: (rule: Record<string, unknown>, pack: { rules: Record<string, unknown>[] }) => void,
    ): readonly string[] => {
      const pack = first()
      change(pack.rules[0]!, pack)
      return issuesOf(pack).map((it) => it.path)
    }
    expect(spoilt((rule) => void (rule.kind = 'guess'))).toContain('$.rules[0].kind')
    expect(spoilt((rule) => void (rule.element = 'luck'))).toContain('$.rules[0].element')
    expect(spoilt((rule) => void (rule.severity = 'awful'))).toContain('$.rules[0].severity')
    expect(spoilt((rule) => void (rule.weight = 3))).toContain('$.rules[0].weight')
    expect(spoilt((rule) => void (rule.parameters = { no: 1 }))).not.toEqual([])
    expect(spoilt((rule, pack) => void (pack.rules[1]!.id = rule.id))).not.toEqual([])
  })

  it('refuse a newer version by name', () => {
    expect(issuesOf({ ...first(), version: 2 })).toMatchObject([
      { path: '$.version', found: 'earths-on/rule-pack version 2' },
    ])
  })
})
