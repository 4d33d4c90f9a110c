/** What feelers say, as a sentence that a verdict follows; null where nothing worth a number flows. Screen and command line. */
import type { Exposure, Feelers } from '../engine'
import { english } from './en'
import { exposureTime } from './exposureTime'
import { makeSay } from './makeSay'
import { amperes, volts } from './quantities'

const say = makeSay(english)

const nothing = { pace: 'feelers.level', touch: 'feelers.nothing', hands: 'feelers.same' } as const

export function feltWords(kind: Feelers['kind'], exposure: Exposure | null): string {
  if (!exposure) return say(nothing[kind])
  return say(`feelers.${kind}Reads`, {
    voltage: volts(exposure.prospectiveVoltage),
    current: amperes(exposure.bodyCurrent),
    limit: kind === 'hands' ? amperes(exposure.limit) : volts(exposure.limit),
    time: exposureTime(exposure),
  })
}
