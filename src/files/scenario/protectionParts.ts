/** What protects a line in `earths-on/scenario`: relays, their reset, expulsion fuses. */
import { curveNames, fuseLinkTypes, fuseRatings, relayResets } from '../../engine'
import { amperes, choice, number, numberChoice, shape, type Field } from '../shape'

/** Primary amperes; the multiplier of a definite-time relay is its delay in seconds. */
export const relay = shape({
  curve: choice(...curveNames),
  pickup: amperes(0.1, 100_000),
  multiplier: number(0.01, 100),
})

export const relayReset = choice(...relayResets)

export const fuses = shape({
  link: choice(...fuseLinkTypes),
  rating: { suffix: 'A', schema: numberChoice(...fuseRatings) } satisfies Field<number>,
})
