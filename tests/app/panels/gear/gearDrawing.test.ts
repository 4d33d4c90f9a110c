import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { gearCatalogue } from '../../../../src/engine'
import { findFinding } from '../../../../src/app/stores/findFinding'
import { GearDrawing } from '../../../../src/app/panels/gear/GearDrawing'

const drawn = (type: string, seen: readonly string[]): string =>
  renderToStaticMarkup(createElement(GearDrawing, { type, name: type, seen }))

const visible = [...gearCatalogue.values()].map(({ id, defects }) => ({
  type: id,
  ids: defects.flatMap(({ foundBy, evidence, end }) => {
    return foundBy === 'look' ? (findFinding({ says: evidence, values: end === undefined ? {} : { end } }) ?? []) : []
  }),
}))

test('whatever a look can find changes the drawing of its item, each in a way of its own', () => {
  let findings = 0
  for (const { type, ids } of visible) {
    const pictures = [drawn(type, []), ...ids.map((id) => drawn(type, [id]))]
    expect(new Set(pictures).size, `${type}: ${ids.join(', ')}`).toBe(ids.length + 1)
    findings += ids.length
  }
  expect(findings).toBeGreaterThan(170)
})

test('every type has a sketch of its own', () => {
  const blank = drawn('nothing', []).replace('nothing', '')
  for (const { type } of visible) expect(drawn(type, []).replace(type, ''), type).not.toBe(blank)
})

test('what is wrong with one clamp of a lead is drawn at that clamp', () => {
  const places = ['1', '2', '3'].map((end) => {
    const [, at] =
      /translate\(([^)]+)\)[^>]*>(?:<path[^>]*d="M22 54)/.exec(drawn('earth-lead', [`worn-jaw@${end}`])) ?? []
    return Number(at?.split(' ')[0])
  })
  expect(places[0]).toBeLessThan(places[1]!)
  expect(places[1]).toBeLessThan(places[2]!)
})

test('two findings on one item are both drawn', () => {
  const both = drawn('boots', ['mud', 'nail-hole-left'])
  const mark = (id: string): string => drawn('boots', [id]).replace(drawn('boots', []), '')
  for (const id of ['mud', 'nail-hole-left']) {
    const sound = drawn('boots', [])
    const one = mark(id)
    const only = [...one.matchAll(/ d="([^"]+)"| r="([^"]+)"/g)]
      .map(([text]) => text)
      .filter((text) => !sound.includes(text))
    expect(only.length).toBeGreaterThan(0)
    for (const text of only) expect(both).toContain(text)
  }
})
