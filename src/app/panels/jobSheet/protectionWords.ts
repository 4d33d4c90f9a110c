/** What protects the feeders, as the job sheet says it: settings, the curves behind them, what is fitted besides. */
import type { Belief } from '../../../engine'
import { plain, say, type Speaker } from '../../../text'

type SheetFeeder = Belief['sheet']['feeders'][number]
type Relay = SheetFeeder['earthFault']

export function relaySetting({ curve, pickup, multiplier }: Relay): string {
  const amperes = `${plain(pickup, 0)} A`
  return curve === 'definite-time' ? `${amperes}, ${plain(multiplier, 2)} s` : `${amperes} × ${plain(multiplier, 2)}`
}

export function protectionNotes(feeders: readonly SheetFeeder[], speaker: Speaker): readonly string[] {
  const relays = feeders.flatMap((it) => [it.overcurrent, it.earthFault])
  const curves = [...new Set(relays.map((it) => speaker.say(`curve.${it.curve}`)))].join(', ')
  const sensitive = feeders.filter((it) => it.sensitiveEarthFault !== undefined)
  return [
    say('job.settingNote', { curves }),
    ...(sensitive.length === 0 ? [say('job.noSensitive')] : []),
    ...feeders.flatMap(({ id, sensitiveEarthFault, fuses }) => {
      const feeder = speaker.say(`thing.${id}`)
      return [
        ...(sensitiveEarthFault ? [say('job.sensitive', { feeder, setting: relaySetting(sensitiveEarthFault) })] : []),
        ...(fuses ? [say('job.fuses', { feeder, rating: plain(fuses.rating, 0), link: fuses.link })] : []),
      ]
    }),
  ]
}
