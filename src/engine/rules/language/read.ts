/**
 * Typed reading of a rule's parameters. The pack check has refused everything of the wrong shape before a rule runs,
 * so a shape that does not fit here is our own mistake.
 */
import { invariant } from '../../units/invariant'
import type { Parameters } from './kind'
import type { Link } from './link'
import type { Pattern } from './pattern'
import type { PredicateCall } from './predicate'

export function readPatterns(parameters: Parameters, name: string): readonly Pattern[] {
  const value = parameters[name]
  if (value === undefined) return []
  return (Array.isArray(value) ? value : [value]) as readonly Pattern[]
}

export function readLinks(parameters: Parameters, name: string): readonly Link[] {
  return (parameters[name] ?? []) as readonly Link[]
}

export function readCall(parameters: Parameters, name: string): PredicateCall | undefined {
  return parameters[name] as PredicateCall | undefined
}

export function requireCall(parameters: Parameters, name: string): PredicateCall {
  const call = readCall(parameters, name)
  invariant(call !== undefined, `a predicate in ${name}`)
  return call
}

export function readText(parameters: Parameters, name: string): string | undefined {
  return parameters[name] as string | undefined
}

export function requireText(parameters: Parameters, name: string): string {
  const text = readText(parameters, name)
  invariant(text !== undefined, `text in ${name}`)
  return text
}

export function readList(parameters: Parameters, name: string): readonly string[] {
  const value = parameters[name]
  if (value === undefined) return []
  return (Array.isArray(value) ? value : [value]) as readonly string[]
}

export function readNumber(parameters: Parameters, name: string): number | undefined {
  return parameters[name] as number | undefined
}

export function readFlag(parameters: Parameters, name: string): boolean {
  return parameters[name] === true
}
