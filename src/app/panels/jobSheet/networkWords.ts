/** What the paper says of pole and network, in the trade's words. */
import type { Belief } from '../../../engine'
import { plain, say, type Speaker } from '../../../text'

type Sheet = Belief['sheet']
type Neutral = Sheet['feeders'][number]['neutral']
type Transformer = Sheet['network']['transformers'][number]
type Fuses = NonNullable<Transformer['fuses']>

/** Short, as on the diagram. @param wires of the line; one has the earth as its return, whatever its transformer does */
export function neutralWords(neutral: Neutral, wires: number): string {
  if (wires === 1) return say('neutral.earthReturn')
  if (neutral.kind === 'resistor') return say('neutral.resistor', { ohm: plain(neutral.resistance, 2) })
  return say(`neutral.${neutral.kind}`)
}

export const fuseWords = ({ rating, link }: Fuses): string => say('network.fuse', { rating: plain(rating, 0), link })

export const powerWords = ({ rating }: { readonly rating: number }): string =>
  say('network.power', { power: plain(rating / 1000, 1) })

/** `120 m west`: along the line from the worked pole. */
function alongWords(along: number): string {
  if (along === 0) return say('network.here')
  return say(along < 0 ? 'network.west' : 'network.east', { metres: plain(Math.abs(along), 0) })
}

export function poleWords({ pole, place }: Sheet): string {
  return [
    pole.number,
    say(`pole.${pole.kind}`),
    say('pole.length', { length: pole.height + pole.buttLength }),
    ...(place.secondLeg ? [say('pole.twoLegs')] : []),
    ...(place.arm === 'wood' ? [say('pole.woodenArm')] : []),
    ...(place.earthTerminal === null ? [] : [say('pole.terminal', { height: place.earthTerminal })]),
  ].join(', ')
}

export function lineWords({ conductors, feeders, switches }: Sheet): string {
  const feeder = feeders.find(({ id }) => switches.some((it) => it.feeder === id)) ?? feeders[0]
  const kilovolts = plain((feeder?.voltage ?? 0) / 1000, 2)
  const wires = conductors.length
  return wires === 1 ? say('network.oneWire', { kilovolts }) : say('network.wires', { kilovolts, wires })
}

export interface NetworkFact {
  readonly id: string
  readonly name: string
  readonly words: string
}

/** What hangs on the section, feeds it from below, runs beside it; a line each. */
export function networkFacts(sheet: Sheet, speaker: Speaker): readonly NetworkFact[] {
  const { network, feeders, lv } = sheet
  const fact = (id: string, ...words: readonly string[]) => ({
    id,
    name: speaker.say(`thing.${id}`),
    words: words.filter(Boolean).join(', '),
  })
  const wire = feeders.find((it) => it.neutralWire)?.neutralWire
  const lamps = lv.wires.find((it) => it.lamps)
  return [
    ...(wire
      ? [{ id: wire.id, name: say('network.neutral'), words: say('network.earthedEvery', { every: wire.earthEvery }) }]
      : []),
    ...network.transformers.map((it) =>
      fact(
        it.id,
        powerWords(it),
        say(`connection.${it.connection}`),
        alongWords(it.along),
        it.fuses ? say('network.fuses', { fuse: fuseWords(it.fuses) }) : say('network.noFuses'),
      ),
    ),
    ...network.sources.map((it) =>
      fact(
        it.id,
        say(`source.${it.kind}`),
        it.kind === 'tie' ? '' : powerWords(it),
        say('network.behind', { name: speaker.say(`thing.${it.transformer}`) }),
      ),
    ),
    ...network.parallels.map((it) =>
      fact(
        it.id,
        say('network.kilovolts', { kilovolts: plain(it.voltage / 1000, 2) }),
        say('network.beside', { from: alongWords(it.from), to: alongWords(it.to) }),
        it.feeder ? say('network.sameFeeder', { name: speaker.say(`thing.${it.feeder}`) }) : '',
        say('network.staysLive'),
      ),
    ),
    ...(lamps ? [fact(lamps.id, say('network.lamps'))] : []),
    ...(lv.wires.length > 0
      ? [
          fact(
            'lv',
            network.lowVoltageFedBy
              ? say('network.lvFrom', { name: speaker.say(`thing.${network.lowVoltageFedBy}`) })
              : say('network.lvElsewhere'),
          ),
        ]
      : []),
  ]
}

/** Feeders with the same neutral are named together. */
export function neutralNotes({ feeders, conductors }: Sheet, speaker: Speaker): readonly string[] {
  const byWords = new Map<string, string[]>()
  for (const { id, neutral } of feeders) {
    const words = neutralWords(neutral, conductors.length)
    byWords.set(words, [...(byWords.get(words) ?? []), speaker.say(`thing.${id}`)])
  }
  return [...byWords].map(([words, names]) => `${names.join(', ')}: ${words}.`)
}
