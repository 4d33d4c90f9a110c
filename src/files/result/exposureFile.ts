/** Exposures and stories with the unit in each key. */
import type { Exposure, StoryAnswer } from '../../engine'

type File = Readonly<Record<string, unknown>>

/** A bystander is judged by the voltage of a pace or touch, the crew by the current through the body. */
export const bystander = 'bystander'

export function exposureFile(exposure: Exposure): File {
  const { prospectiveVoltage, bodyVoltage, bodyCurrent, heartEquivalent, duration, limit, judged, layer, ...rest } =
    exposure
  return {
    ...rest,
    prospectiveVoltageV: prospectiveVoltage,
    bodyVoltageV: bodyVoltage,
    bodyCurrentA: bodyCurrent,
    heartEquivalentA: heartEquivalent,
    durationS: duration,
    ...(exposure.person === bystander ? { limitV: limit, judgedV: judged } : { limitA: limit, judgedA: judged }),
    layer: layer && { item: layer.item, voltageV: layer.voltage, did: layer.did },
  }
}

export function storyFile(answer: StoryAnswer): File {
  if (answer.kind === 'unsolvable') return { ...answer }
  const { siteRise, liveCurrent, duration, end, exposures, ...rest } = answer
  return {
    ...rest,
    siteRiseV: siteRise,
    liveCurrentA: liveCurrent,
    durationS: duration,
    endS: end,
    exposures: exposures.map(exposureFile),
  }
}
