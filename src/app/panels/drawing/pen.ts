/** Small arithmetic of the drawings: points to path strings, to a tenth of a pixel. */
export type Point = readonly [number, number]

export const tenth = (value: number): number => Math.round(value * 10) / 10

export const pathOf = (points: readonly Point[], closed = false): string =>
  `M${points.map(([x, y]) => `${tenth(x)} ${tenth(y)}`).join('L')}${closed ? 'Z' : ''}`

/** Maps metres to pixels: x to the right, y upwards. */
export interface Scale {
  readonly perMetre: number
  x(metres: number): number
  y(metres: number): number
}

export const makeScale = (perMetre: number, originX: number, originY: number): Scale => ({
  perMetre,
  x: (metres) => tenth(originX + metres * perMetre),
  y: (metres) => tenth(originY - metres * perMetre),
})
