/** Everything that an action can say has words, with every placeholder filled. Checked over all recorded runs. */
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { actions, facts, type Evidence } from '../../../src/engine'
import { english } from '../../../src/text'
import { recorded, before } from '../../support/cleanStages'
import { marrowBendRuns } from '../../support/record/runs/marrowBend'

interface WordsFile {
  readonly words: Readonly<Record<string, string>>
}

const scenarioFile = new URL('../../../scenarios/marrow-bend/text.en.json', import.meta.url)
const scenarioWords = (JSON.parse(readFileSync(scenarioFile, 'utf8')) as WordsFile).words
const words: Readonly<Record<string, string>> = { ...scenarioWords, ...english }
const has = (key: string): boolean => Object.hasOwn(words, key)

const placeholders = (sentence: string): readonly string[] =>
  [...sentence.matchAll(/\{(\w+)(?::\w+)?\}/g)].map((it) => it[1]!)

/** Placeholders that name something must find its name, unless the name is an item's number. */
const named = (sentence: string): readonly (readonly [string, string])[] =>
  [...sentence.matchAll(/\{(\w+):(thing|person|choice)\}/g)].map((it) => [it[1]!, it[2]!] as const)

const everything: readonly Evidence[] = marrowBendRuns.flatMap(({ name }) => recorded(name).end.evidence)

describe('words', () => {
  test('each action has a name', () => {
    expect([...actions.keys()].filter((id) => !has(`action.${id}`))).toEqual([])
  })

  test('each fact that the world can refuse by has a sentence', () => {
    expect(facts.filter((fact) => !has(`refusal.${fact}`))).toEqual([])
  })

  test('each line of evidence of every recorded run has a sentence and fills it', () => {
    const lines = new Map(everything.map((it) => [it.says, it]))
    expect(lines.size).toBeGreaterThan(100)
    const wrong = [...lines.values()].flatMap(({ says, values, of, who }) => {
      const sentence = words[says]
      if (sentence === undefined) return [says]
      const given: Readonly<Record<string, string | number>> = { ...values, of, who }
      const empty = placeholders(sentence).filter((name) => !Object.hasOwn(given, name))
      return empty.map((name) => `${says}: ${name}`)
    })
    expect(wrong).toEqual([])
  })

  test('what a sentence names has a name', () => {
    const wrong = everything.flatMap(({ says, values, of, who }) => {
      const given: Readonly<Record<string, string | number>> = { ...values, of, who }
      return named(words[says] ?? '')
        .map(([name, kind]) => `${kind}.${given[name]}`)
        .filter((key) => !has(key))
    })
    expect([...new Set(wrong)]).toEqual([])
  })

  test('each choice of each action has words, its own or those of a thing, person or number', () => {
    const site = before('clamp')
    const missing = [...actions.values()].flatMap((action) =>
      Object.values(action.values ?? {}).flatMap((spec) => {
        if (spec.kind !== 'choice') return []
        return spec
          .of(site)
          .filter(
            (it) => !/^(P\d+ )?[\d ]+$/.test(it) && !['choice', 'thing', 'person'].some((kind) => has(`${kind}.${it}`)),
          )
      }),
    )
    expect(missing).toEqual([])
  })

  test('each value of each action has a label', () => {
    const names = new Set([...actions.values()].flatMap((action) => Object.keys(action.values ?? {})))
    expect([...names].filter((name) => !has(`value.${name}`))).toEqual([])
  })
})
