/** What several parts of a scenario file share. */
import * as v from 'valibot'
import { choice, ohms, shape } from '../shape'

export const phase = () => choice('A', 'B', 'C')

/** Resistance and reactance. */
export const impedance = v.pipe(
  shape({ resistance: ohms(0, 1e6), reactance: ohms(-1e6, 1e6) }),
  v.transform(({ resistance, reactance }) => ({ re: resistance, im: reactance })),
) as v.GenericSchema<unknown, { readonly re: number; readonly im: number }>
