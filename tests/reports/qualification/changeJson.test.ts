import { describe, expect, it } from 'vitest'
import { changeJson } from '../../../src/reports/qualification/changeJson'

const scenario = { horizonS: 60, feeders: [{ id: 'f1', neutral: { kind: 'solid' } }, { id: 'f2' }], layers: [1, 2] }

describe('changeJson', () => {
  it('replaces what a path names: by key, by an item’s id, by its place', () => {
    const changed = changeJson(scenario, { horizonS: 30, 'feeders.f1.neutral.kind': 'unearthed', 'layers.1': 7 })
    expect(changed).toEqual({
      horizonS: 30,
      feeders: [{ id: 'f1', neutral: { kind: 'unearthed' } }, { id: 'f2' }],
      layers: [1, 7],
    })
    expect(scenario.feeders[0]!.neutral).toEqual({ kind: 'solid' })
  })

  it('adds a key, or an item one beyond the last; null takes out', () => {
    expect(changeJson(scenario, { name: 'x', 'layers.2': 3 })).toMatchObject({ name: 'x', layers: [1, 2, 3] })
    expect(changeJson(scenario, { 'feeders.f1': null, horizonS: null })).toEqual({
      feeders: [{ id: 'f2' }],
      layers: [1, 2],
    })
  })

  it.each(['feeders.f9.neutral', 'feeders.f9', 'layers.4', 'horizonS.kind'])(
    'stops at %s, which is not there',
    (path) => {
      expect(() => changeJson(scenario, { [path]: 1 })).toThrow(`there is no ${path}`)
    },
  )
})
