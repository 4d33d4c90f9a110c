/** `earths-on/result`, version 1: what grading a run gave, with the unit in each key and the digests of what it rests on. */
import type { Result } from '../../engine'
import { canonicalText } from '../canonical'
import { bystander, exposureFile, uncleared } from './exposureFile'

const resultFormat = 'earths-on/result'
const resultVersion = 1

export interface ResultHead {
  readonly run: string
  readonly runDigest: string
  readonly scenarioDigest: string
  readonly packDigest: string
  readonly engine: number
  readonly engineDigest: string
}

/** One line, canonical: the same result gives the same bytes in node and browser. */
export function writeResult(head: ResultHead, result: Result): string {
  return canonicalText({ format: resultFormat, version: resultVersion, ...head, ...resultFile(result) })
}

function resultFile(result: Result): Readonly<Record<string, unknown>> {
  const { visible, sweep, without, ...rest } = result
  return {
    ...rest,
    visible: visible && {
      livening: visible.livening,
      at: visible.at,
      clearedBy: visible.clearedBy,
      durationS: visible.clearedBy === 'nothing' ? uncleared : visible.duration,
      siteRiseV: visible.siteRise,
      liveCurrentA: visible.liveCurrent,
      exposures: visible.exposures.map(exposureFile),
    },
    sweep: sweep.map(({ exposure, ...worst }) => ({ ...worst, exposure: exposureFile(exposure) })),
    without: without.map(({ item, persons }) => ({
      item,
      persons: persons.map(({ person, withIt, withoutIt }) => ({
        person,
        ...(person === bystander
          ? { withItV: withIt, withoutItV: withoutIt }
          : { withItA: withIt, withoutItA: withoutIt }),
      })),
    })),
  }
}
