/** `shock-zone`: IEC 60479-1 zone of a body current on a path. */
import { heartEquivalent, shockPaths, shockZone } from '../../../engine'
import { model } from '../model'

export const shockZoneModel = model(
  'shock-zone',
  (inputs) => ({
    current: inputs.number('currentA', { atLeast: 0 }),
    duration: inputs.number('durationS', { above: 0 }),
    path: inputs.oneOf('path', shockPaths),
  }),
  ({ current, duration, path }) => {
    const equivalent = heartEquivalent(current, path)
    return { heartEquivalentA: equivalent, zone: shockZone(current, equivalent, duration) }
  },
)
