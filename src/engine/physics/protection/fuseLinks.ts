/**
 * Melting currents of expulsion fuse links, types K (fast) and T (slow), as ANSI C37.42 and IEC 60282-2 prescribe them:
 * the least and the most current (A, rms) that melts a link in 300 s (600 s above 100 A), in 10 s and in 0.1 s.
 * From memory, no copy of either standard seen: take each figure as ±3 %, those of the intermediate ratings (8, 12, 20,
 * 30, 50, 80 A) and of T 140 and 200 as ±5 %.
 */
export const fuseLinkTypes = ['K', 'T'] as const
export type FuseLinkType = (typeof fuseLinkTypes)[number]

export const fuseRatings = [6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 65, 80, 100, 140, 200] as const

/** Least and most, at the longest time, 10 s and 0.1 s. */
export type MeltingCurrents = readonly [
  long: readonly [least: number, most: number],
  tenSeconds: readonly [least: number, most: number],
  tenthOfSecond: readonly [least: number, most: number],
]

export const meltingCurrents: Readonly<Record<FuseLinkType, ReadonlyMap<number, MeltingCurrents>>> = {
  K: tableOf([
    [6, 12, 14.4, 13.5, 20.5, 72, 86],
    [8, 15, 18, 18, 27, 97, 116],
    [10, 19.5, 23.4, 22.5, 34, 128, 154],
    [12, 25, 30, 29.5, 44, 166, 199],
    [15, 31, 37.2, 37, 55, 215, 258],
    [20, 39, 47, 48, 71, 273, 328],
    [25, 50, 60, 60, 90, 350, 420],
    [30, 63, 76, 77.5, 115, 447, 546],
    [40, 80, 96, 98, 146, 565, 680],
    [50, 101, 121, 126, 188, 719, 862],
    [65, 128, 153, 159, 237, 918, 1100],
    [80, 160, 192, 205, 307, 1180, 1420],
    [100, 200, 240, 258, 388, 1520, 1820],
    [140, 310, 372, 430, 650, 2470, 2970],
    [200, 480, 576, 760, 1150, 3880, 4650],
  ]),
  T: tableOf([
    [6, 12, 14.4, 15.3, 23, 120, 144],
    [8, 15, 18, 20.5, 31, 166, 199],
    [10, 19.5, 23.4, 26.5, 40, 224, 269],
    [12, 25, 30, 34.5, 52, 296, 355],
    [15, 31, 37.2, 44.5, 67, 388, 466],
    [20, 39, 47, 57, 85, 496, 595],
    [25, 50, 60, 73.5, 109, 635, 762],
    [30, 63, 76, 93, 138, 812, 975],
    [40, 80, 96, 120, 178, 1040, 1240],
    [50, 101, 121, 152, 226, 1310, 1570],
    [65, 128, 153, 195, 291, 1650, 1975],
    [80, 160, 192, 248, 370, 2080, 2500],
    [100, 200, 240, 319, 475, 2620, 3150],
    [140, 310, 372, 480, 720, 4000, 4800],
    [200, 480, 576, 850, 1275, 6250, 7470],
  ]),
}

type Row = readonly [number, number, number, number, number, number, number]

function tableOf(rows: readonly Row[]): ReadonlyMap<number, MeltingCurrents> {
  return new Map(
    rows.map(([rating, a, b, c, d, e, f]) => [
      rating,
      [
        [a, b],
        [c, d],
        [e, f],
      ],
    ]),
  )
}
