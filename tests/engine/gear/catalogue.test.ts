/** Contract of every entry of the gear catalogue, and the facts of the trade that it must hold. */
import { describe, expect, it, test } from 'vitest'
import { gearCatalogue, insulationClasses, insulationRating } from '../../../src/engine'
import { english } from '../../../src/text'

const words: Readonly<Record<string, string>> = english
const types = [...gearCatalogue.values()]

describe.each(types)('$id', (type) => {
  it('has defects with ids of their own, and words for each evidence', () => {
    expect(new Set(type.defects.map((it) => it.id)).size).toBe(type.defects.length)
    for (const defect of type.defects) {
      expect(defect.id).toMatch(/^[a-z]+(-[a-z0-9]+)*$/)
      expect(words[defect.evidence], defect.evidence).toBeDefined()
    }
    expect(words[`gear.${type.id}`]).toBeDefined()
    expect(words[`gear.${type.id}.look.sound`]).toBeDefined()
  })

  it('has a harmless mark beside what is really wrong, and evidence never says which', () => {
    const marks = type.defects.filter((it) => Object.keys(it.changes).length === 0)
    expect(marks.length).toBeGreaterThan(0)
    expect(marks.length).toBeLessThan(type.defects.length)
    for (const { evidence } of type.defects)
      expect(words[evidence]).not.toMatch(/\b(defect|defective|fails?|unsafe|safe|harmless|danger|ok|reject|usable)\b/i)
  })

  it('has each end of it turned over: a defect sits at an end that is there, and its words name it', () => {
    for (const { id, end, evidence } of type.defects) {
      if (end === undefined) continue
      expect(type.ends, id).toContain(end)
      const alike = type.defects.filter((it) => it.evidence === evidence)
      if (alike.length > 1) expect(words[evidence], evidence).toContain('{end')
    }
  })

  it('passes by a criterion that stands in words, with what it rests on', () => {
    const criterion = words[`passes.${type.id}`]
    expect(criterion?.length).toBeGreaterThan(5)
    // A figure of a standard is checked or from memory; what has no source says so.
    const { source, sure } = type.passes
    expect(sure === 'practice').toBe(source === 'common practice, no source')
    if (sure !== 'practice') expect(source).toMatch(/IEC|EN |ASTM|CFR|GS 38|US rule/)
  })

  it('is found by a test only when there is one', () => {
    const needsTest = type.defects.some((it) => it.foundBy === 'test')
    if (needsTest) expect(type.test).toBeDefined()
    if (type.test) expect(words[`gear.${type.id}.test.sound`]).toBeDefined()
  })

  it('has a class that exists, if it insulates by class', () => {
    if ('class' in type.parameters) expect(insulationClasses).toContain(type.parameters.class)
    if (type.worn) expect(type.ends).toBeUndefined()
  })
})

/** The table of gear in the procedure has 45 rows; a clamp, a ferrule, a stick head or a rod clamp is a row of its own. */
test('every row of the table of gear stands in the catalogue', () => {
  const rows = new Set(types.flatMap((it) => it.rows))
  expect([...rows].sort((a, b) => a - b)).toEqual(Array.from({ length: 45 }, (_, i) => i + 1))
})

/** Classes and sections that the trade uses for this job; common practice, no source. */
describe('the trade', () => {
  it('keeps boots, cover and guards of class 1, gloves of class 0 below the low voltage', () => {
    expect(['boots', 'pole-cover', 'lv-guard'].map((id) => gearCatalogue.get(id)?.parameters.class)).toEqual([
      '1',
      '1',
      '1',
    ])
    expect(gearCatalogue.get('lv-gloves')?.parameters.class).toBe('0')
  })

  it('is tested as often and used up to as much as its criterion says', () => {
    // 29 CFR 1910.137 table I-5: gloves six months; IEC 60903: class 0 up to 1 kV, class 2 up to 17 kV; EN 50321 boots as gloves.
    for (const [type, item] of [
      ['lv-gloves', 'glove'],
      ['switching-gloves', 'glove'],
      ['boots', 'boot'],
    ] as const) {
      const { maxUse, retestMonths } = insulationRating(item, gearCatalogue.get(type)!.parameters.class as '0')
      expect(retestMonths, type).toBe(6)
      expect(words[`passes.${type}`], type).toContain('six months')
      expect(words[`passes.${type}`], type).toContain(`up to ${maxUse / 1000} kV`)
    }
  })

  it('clamps the earth end of a lead first in its order of ends', () => {
    expect(gearCatalogue.get('earth-lead')?.ends?.[0]).toBe('earth')
    expect(gearCatalogue.get('bond-lead')?.ends).toEqual(['metal', 'line'])
  })
})
