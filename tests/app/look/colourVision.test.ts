// Colours as eyes see them that lack a kind of cone, and as grey print. Computed from the one table of the look.
//
// Relative luminance and sRGB transfer: IEC 61966-2-1 and WCAG 2.2. Lightness L*: CIE 1976. Deficiencies, severity 1.0:
// G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, A Physiologically-based Model for Simulation of Color Vision
// Deficiency, IEEE TVCG 15 (2009), table 1 (from memory; the rows sum to 1, which is checked, since grey must stay grey).

import { describe, expect, test } from 'vitest'
import { colours, colourOf, grounds, surfaces } from '../../../src/app/tokens'
import { rampNames, rgbOf } from '../../../src/app/scene/ink/palette'
import { themes } from '../../../src/app/stores/theme'
import { filesBelow, read } from '../../support/sourceTree'

type Triple = readonly [number, number, number]

const deficiencies: Readonly<Record<string, readonly [Triple, Triple, Triple]>> = {
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritan: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
}

const linear = (channel: number): number => (channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4)
const linearOf = (hex: string): Triple => rgbOf(hex).map(linear) as unknown as Triple
const clamp = (value: number): number => Math.min(1, Math.max(0, value))
const luminance = ([r, g, b]: Triple): number => 0.2126 * r + 0.7152 * g + 0.0722 * b
const lightness = (y: number): number => (y > 216 / 24389 ? 116 * Math.cbrt(y) - 16 : (y * 24389) / 27)

/** What each kind of eye makes of a colour; grey print leaves the luminance. */
const eyes: Readonly<Record<string, (colour: Triple) => Triple>> = {
  everybody: (colour) => colour,
  grey: (colour) => [luminance(colour), luminance(colour), luminance(colour)],
  ...Object.fromEntries(
    Object.entries(deficiencies).map(([name, rows]) => [
      name,
      (colour: Triple) =>
        rows.map((row) => clamp(row[0] * colour[0] + row[1] * colour[1] + row[2] * colour[2])) as unknown as Triple,
    ]),
  ),
}

/** CIE 1976 L*a*b* under D65. */
function labOf([r, g, b]: Triple): Triple {
  const f = (t: number): number => (t > 216 / 24389 ? Math.cbrt(t) : ((t * 24389) / 27 + 16) / 116)
  const x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505)
  const y = f(luminance([r, g, b]))
  const z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089)
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)]
}

const apart = (a: Triple, b: Triple): number => {
  const [p, q] = [labOf(a), labOf(b)]
  return Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2])
}

const contrast = (a: Triple, b: Triple): number => {
  const [low, high] = [luminance(a), luminance(b)].sort((p, q) => p - q) as [number, number]
  return (high + 0.05) / (low + 0.05)
}

test('grey stays grey for every eye: each row sums to one', () => {
  for (const [name, rows] of Object.entries(deficiencies))
    for (const row of rows) expect(row[0] + row[1] + row[2], name).toBeCloseTo(1, 5)
})

describe.each(themes)('in %s', (theme) => {
  const seenBy = (eye: string, name: keyof typeof colours): Triple => eyes[eye]!(linearOf(colourOf(name, theme)))

  test.each(Object.keys(eyes))('the tints of the ground potential keep their order for %s', (eye) => {
    const steps = rampNames.map((name) => lightness(luminance(seenBy(eye, name))))
    // High contrast leaves the lowest two untinted.
    const shown = theme === 'contrast' ? steps.slice(1) : steps
    const falls = shown[0]! > shown.at(-1)!
    for (let i = 1; i < shown.length; i++) {
      const step = falls ? shown[i - 1]! - shown[i]! : shown[i]! - shown[i - 1]!
      // One unit of L* is about what can just be told apart side by side.
      expect(step, `${rampNames[i]} after ${rampNames[i - 1]}`).toBeGreaterThan(2)
    }
  })

  test.each(Object.keys(eyes))('lines on the tints are told from them by %s', (eye) => {
    for (const name of ['v1', 'v2', 'v3', 'v4'] as const)
      expect(contrast(seenBy(eye, 'contour'), seenBy(eye, name)), name).toBeGreaterThan(2)
  })

  test.each(Object.keys(eyes))('what is said in colour is read by %s: 4.5 to 1 on the sheet', (eye) => {
    for (const name of ['ink', 'ink-2', 'live', 'earthed', 'risen', 'accent', 'contour'] as const)
      expect(contrast(seenBy(eye, name), seenBy(eye, 'paper')), name).toBeGreaterThanOrEqual(4.5)
  })

  test.each(Object.keys(eyes).filter((eye) => eye !== 'grey'))('live and earthed are two colours for %s', (eye) => {
    // ΔE*ab of 10 is plain at a glance; a conductor's flag differs by its shape and letter besides.
    expect(apart(seenBy(eye, 'live'), seenBy(eye, 'earthed'))).toBeGreaterThan(10)
  })
})

test('every colour of the scene and of the sheets stands in the one table', () => {
  const written = /['"\s:]#[0-9a-fA-F]{3,8}\b|\b(rgba?|hsla?|oklch)\(/
  // The mask of the lettering is coverage, not colour.
  const mask = 'src/app/scene/ink/plateAtlas.ts'
  const look = filesBelow('src/app').filter((path) => /\.(css|tsx?)$/.test(path) && path !== 'src/app/tokens.ts')
  const withColours = look.filter(
    (path) =>
      path !== mask &&
      read(path)
        .split('\n')
        .some((line) => written.test(line)),
  )
  expect(withColours).toEqual([])
})

test('each colour is there for each theme', () => {
  const all = [...Object.values(colours), ...Object.values(surfaces), ...Object.values(grounds)]
  for (const value of all) {
    if (typeof value === 'string') expect(Object.keys(colours)).toContain(value)
    else for (const hex of value) expect(hex).toMatch(/^#[0-9a-f]{6}$/)
  }
  for (const value of Object.values(colours)) expect(value).toHaveLength(themes.length)
})
