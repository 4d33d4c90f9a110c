/**
 * Compares what a model gave with what a case expects. Nothing passes by default: a path that is not there, a number
 * that is not finite or has no tolerance, an expected 0 without an absolute tolerance each fail with the reason.
 */
import type { Values } from './model'
import type { QualificationCase, Tolerance } from './qualificationCase'

/** One value of a case: what was expected, within what, and what the model gave. */
export interface ComparedValue {
  readonly path: string
  readonly expected: number | string
  readonly tolerance: Tolerance
  /** Undefined when the model gives no single value there. */
  readonly got: number | string | undefined
  readonly isMet: boolean
}

export function compared(output: Values, { expected, tolerance }: QualificationCase): readonly ComparedValue[] {
  return Object.entries(expected).map(([path, value]) => {
    const within = toleranceFor(path, tolerance)
    const got = findValue(output, path)
    const isMet = difference(path, value, got, within) === undefined
    return { path, expected: value, tolerance: within, got: typeof got === 'object' ? undefined : got, isMet }
  })
}

/** Why the output does not meet the case; empty when it does. */
export function differences(output: Values, { expected, tolerance }: QualificationCase): readonly string[] {
  const paths = Object.keys(expected)
  if (paths.length === 0) return ['the case expects nothing, so nothing can be shown']
  return paths.flatMap((path) => {
    const reason = difference(path, expected[path]!, findValue(output, path), toleranceFor(path, tolerance))
    return reason === undefined ? [] : [`${path}: ${reason}`]
  })
}

function difference(
  path: string,
  expected: number | string,
  got: number | string | Values | undefined,
  tolerance: Tolerance,
): string | undefined {
  if (got === undefined) return 'the model gives no such value'
  if (typeof got === 'object') return `the model gives several values here: ${Object.keys(got).join(', ')}`
  if (typeof expected === 'string') return got === expected ? undefined : `expected ${expected}, got ${got}`
  if (typeof got === 'string') return `expected ${expected}, got ${got}`
  if (!Number.isFinite(got)) return `expected ${expected}, got ${got}, which is not a finite number`
  const { absolute, relative } = tolerance
  if (absolute === undefined && relative === undefined) return 'no tolerance is given for this number'
  if (isAngle(path)) {
    if (absolute === undefined) return 'an angle needs an absolute tolerance'
    return turnBetween(expected, got) <= absolute
      ? undefined
      : `expected ${expected}° ± ${absolute}°, got ${brief(got)}°`
  }
  if (expected === 0 && absolute === undefined) return 'an expected 0 needs an absolute tolerance'
  const error = Math.abs(got - expected)
  const isWithin =
    (absolute !== undefined && error <= absolute) || (relative !== undefined && error <= relative * Math.abs(expected))
  return isWithin ? undefined : `expected ${expected} ± ${spoken(tolerance)}, got ${brief(got)}`
}

/** The longest key first, so that a node called `pole.base` is found as well as a list's `0.1`. */
function findValue(output: Values, path: string): number | string | Values | undefined {
  const parts = path.split('.')
  for (let taken = parts.length; taken > 0; taken -= 1) {
    const key = parts.slice(0, taken).join('.')
    if (!Object.hasOwn(output, key)) continue
    const value = (output as Readonly<Record<string, number | string | Values>>)[key]
    if (taken === parts.length) return value
    if (typeof value !== 'object') continue
    const found = findValue(value, parts.slice(taken).join('.'))
    if (found !== undefined) return found
  }
  return undefined
}

function toleranceFor(path: string, tolerance: QualificationCase['tolerance']): Tolerance {
  if (tolerance === undefined) return {}
  if (isForAll(tolerance)) return tolerance
  return Object.hasOwn(tolerance, path) ? tolerance[path]! : {}
}

function isForAll(tolerance: Tolerance | Readonly<Record<string, Tolerance>>): tolerance is Tolerance {
  return Object.values(tolerance).every((limit) => typeof limit === 'number')
}

function isAngle(path: string): boolean {
  return /angleDeg(\.|$)/i.test(path)
}

/** Degrees between two directions, 0–180. */
function turnBetween(one: number, other: number): number {
  const turn = Math.abs(one - other) % 360
  return Math.min(turn, 360 - turn)
}

function spoken({ absolute, relative }: Tolerance): string {
  const parts = [
    ...(absolute === undefined ? [] : [String(absolute)]),
    ...(relative === undefined ? [] : [`${brief(relative * 100)} %`]),
  ]
  return parts.join(' or ')
}

function brief(value: number): string {
  return String(Number(value.toPrecision(6)))
}
