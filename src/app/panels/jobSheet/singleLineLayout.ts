/**
 * Where each thing of the single-line diagram stands: in order along the section, evenly spaced; what hangs below the
 * line each on a row of its own, the rightmost highest, so that no drop runs through another's words. Pixels of the sheet.
 */
import type { Belief } from '../../../engine'

export const width = 616

type Sheet = Belief['sheet']
type SheetSwitch = Sheet['switches'][number]
type Transformer = Sheet['network']['transformers'][number]
type Source = Sheet['network']['sources'][number]

export interface Drop {
  readonly x: number
  readonly y: number
  readonly hangs:
    | { readonly kind: 'transformer'; readonly transformer: Transformer; readonly sources: readonly Source[] }
    | { readonly kind: 'branch'; readonly branch: SheetSwitch }
}

export interface SingleLineLayout {
  /** Height of the line itself. */
  readonly line: number
  readonly pole: number
  readonly crossing: number
  /** In the line: the outermost on either side, where there is one. */
  readonly supply: { readonly x: number; readonly it: SheetSwitch } | null
  readonly tie: { readonly x: number; readonly it: SheetSwitch } | null
  readonly parallels: readonly {
    readonly y: number
    readonly from: number
    readonly to: number
    readonly it: Sheet['network']['parallels'][number]
  }[]
  readonly drops: readonly Drop[]
  /** The neutral wire below the line; null where there is none. */
  readonly neutral: number | null
  readonly lowVoltage: number
  readonly height: number
}

const bandHeight = 26
const rowHeight = 58
const sourceHeight = 32
const [left, right] = [122, 490] as const

export function layOut(sheet: Sheet): SingleLineLayout {
  const { switches, network, section, feeders } = sheet
  const outermost = [...switches].sort((a, b) => a.along - b.along)
  const supply = outermost.find((it) => it.along < 0) ?? null
  const tie = outermost.findLast((it) => it.along > 0) ?? null
  const branches = switches.filter((it) => it !== supply && it !== tie)
  const things = [
    ...switches.map(({ id, along }) => ({ id, along })),
    ...network.transformers.map(({ id, along }) => ({ id, along })),
    { id: 'pole', along: 0 },
    { id: 'crossing', along: section.crossingAlong },
  ].sort((a, b) => a.along - b.along)
  const step = (right - left) / things.length
  const xOf = (id: string): number => left + step * (things.findIndex((it) => it.id === id) + 0.5)
  const line = 66 + bandHeight * network.parallels.length
  const neutral = feeders.some((it) => it.neutralWire) ? line + 52 : null
  const below = neutral === null ? line + 40 : neutral + 52
  const drops = rowsOf(
    [
      ...network.transformers.map((transformer) => ({
        x: xOf(transformer.id),
        hangs: {
          kind: 'transformer',
          transformer,
          sources: network.sources.filter((it) => it.transformer === transformer.id),
        } as const,
      })),
      ...branches.map((branch) => ({ x: xOf(branch.id), hangs: { kind: 'branch', branch } as const })),
    ],
    below,
  )
  // Clear of what stands at the foot of the stations, too.
  const ends = drops.map((drop) => drop.y + heightOf(drop.hangs) + 12)
  const lowVoltage = Math.max(below + 40, ...ends)
  const foot = Math.max((neutral ?? line + 35) + 42, ...ends)
  /** Between the things that it begins and ends beside. */
  const between = (along: number): number => {
    const before = things.filter((it) => it.along <= along).length
    return left + step * before
  }
  return {
    line,
    pole: xOf('pole'),
    crossing: xOf('crossing'),
    supply: supply && { x: xOf(supply.id), it: supply },
    tie: tie && { x: xOf(tie.id), it: tie },
    parallels: network.parallels.map((it, i) => ({
      y: 46 + bandHeight * i,
      from: between(it.from),
      to: Math.max(between(it.to), between(it.from) + step),
      it,
    })),
    drops,
    neutral,
    lowVoltage,
    height: sheet.lv.wires.length > 0 ? lowVoltage + 62 : foot + 34,
  }
}

const heightOf = (hangs: Drop['hangs']): number =>
  hangs.kind === 'branch' ? rowHeight : rowHeight + sourceHeight * hangs.sources.length

function rowsOf(hanging: readonly Pick<Drop, 'x' | 'hangs'>[], top: number): readonly Drop[] {
  let y = top
  return [...hanging]
    .sort((a, b) => b.x - a.x)
    .map((drop) => {
      const placed = { ...drop, y }
      y += heightOf(drop.hangs)
      return placed
    })
}
