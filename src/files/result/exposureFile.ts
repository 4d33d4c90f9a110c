/** Exposures and stories with the unit in each key. */
import type { Exposure, StoryAnswer } from '../../engine'

type File = Readonly<Record<string, unknown>>

/** A bystander is judged by the voltage of a pace or touch, the crew by the current through the body. */
export const bystander = 'bystander'

/** Instead of seconds, where nothing cleared it before the horizon. */
export const uncleared = 'uncleared'

export function exposureFile(exposure: Exposure): File {
  const {
    prospectiveVoltage,
    bodyVoltage,
    bodyCurrent,
    heartEquivalent,
    duration,
    shots,
    limit,
    judged,
    layer,
    ...rest
  } = exposure
  return {
    ...rest,
    prospectiveVoltageV: prospectiveVoltage,
    bodyVoltageV: bodyVoltage,
    bodyCurrentA: bodyCurrent,
    heartEquivalentA: heartEquivalent,
    durationS: exposure.cleared ? duration : uncleared,
    shots: { count: shots.count, longestS: shots.longest, totalS: shots.total },
    ...(exposure.person === bystander ? { limitV: limit, judgedV: judged } : { limitA: limit, judgedA: judged }),
    layer: layer && { item: layer.item, voltageV: layer.voltage, did: layer.did },
  }
}

export function storyFile(answer: StoryAnswer): File {
  if (answer.kind === 'unsolvable') return { ...answer }
  const { siteRise, liveCurrent, duration, end, shots, exposures, livestock, happenings, ...rest } = answer
  return {
    ...rest,
    siteRiseV: siteRise,
    liveCurrentA: liveCurrent,
    durationS: answer.clearedBy === 'nothing' ? uncleared : duration,
    endS: end,
    shots: shots.map((it) => ({ fromS: it.from, toS: it.to, currentA: it.current })),
    exposures: exposures.map(exposureFile),
    happenings: happenings.map(({ at, ...it }) => ({ atS: at, ...it })),
    ...(livestock && {
      livestock: {
        path: livestock.path,
        voltageV: livestock.voltage,
        limitV: livestock.limit,
        feet: livestock.feet.map(({ x, y }) => ({ xM: x, yM: y })),
      },
    }),
  }
}
