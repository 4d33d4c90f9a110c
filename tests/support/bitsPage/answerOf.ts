// What the engine answers to a job as texts: the whole result of a run with its sweep, and every value of the cases.

import { actions, drawScenario, extendTimeline, judgeRun, openTimeline } from '../../../src/engine'
import { readQualification } from '../../../src/files/qualification/readQualification'
import { writeResult } from '../../../src/files/result/write'
import { readPack } from '../../../src/files/rulePack/read'
import { readRun } from '../../../src/files/run/read'
import { readScenario } from '../../../src/files/scenario/read'
import { qualifyCase } from '../../../src/reports/qualification'

export interface Texts {
  readonly scenario: string
  readonly pack: string
  readonly run: string
  readonly cases: readonly string[]
}

const head = { run: 'bits', runDigest: '', scenarioDigest: '', packDigest: '', engine: 0, engineDigest: '' }

/** @throws when one of the texts cannot be read */
export function answerOf({ scenario, pack, run, cases }: Texts): string {
  const [base, rules, { seed, purpose, orders }] = [
    required(readScenario(scenario)),
    required(readPack(pack)),
    required(readRun(run, actions)),
  ]
  const timeline = orders.reduce(extendTimeline, openTimeline(drawScenario(base, seed, purpose)))
  const values = cases.flatMap((text) => required(readQualification(text)).cases.map((it) => qualifyCase(it).values))
  return `${writeResult(head, judgeRun(timeline, rules, { sweep: true }))}\n${JSON.stringify(values)}`
}

type Read<Value> = { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly issues: unknown }

function required<Value>(read: Read<Value>): Value {
  if (!read.ok) throw new Error(JSON.stringify(read.issues))
  return read.value
}
