/**
 * Ground potential as a surveyor draws a hill: tints every 500 V, a line every 250 V, each 1 000 V heavier, figures along
 * one quiet ray. Even interval on purpose: spacing is steepness. The line where a pace reaches the tolerable step voltage
 * is drawn as its own, outermost.
 */
import { contours } from 'd3-contour'
import { useMemo } from 'react'
import type { GroundGrid } from '../../../engine'
import { plain } from '../../../text'
import type { Scale } from './pen'
import { tenth } from './pen'

export interface GroundContoursProps {
  readonly grid: GroundGrid
  readonly volts: readonly number[]
  /** Volts over a pace of one metre. */
  readonly tolerable: number
  readonly scale: Scale
  readonly width: number
  readonly height: number
}

const interval = 250
const tint = 500

type Ring = readonly (readonly number[])[]

export function GroundContours({ grid, volts, tolerable, scale, width, height }: GroundContoursProps) {
  const rings = useMemo(() => ringsOf(grid, volts, tolerable), [grid, volts, tolerable])
  const path = (list: readonly Ring[]) =>
    list.map((ring) => `M${ring.map(([c, r]) => pointOf(grid, scale, c!, r!)).join('L')}Z`).join('')
  return (
    <g>
      <rect width={width} height={height} style={{ fill: 'var(--v1)' }} />
      {rings.tints.map(({ level, polygons }, i) => (
        <path
          key={level}
          d={path(polygons.flat())}
          style={{ fill: `var(--v${Math.min(9, i + 2)})`, fillRule: 'evenodd' }}
        />
      ))}
      {rings.lines.map(({ level, polygons }) => (
        <path
          key={level}
          d={path(polygons.flat())}
          style={{
            fill: 'none',
            stroke: level >= 3500 ? 'var(--paper)' : 'var(--contour)',
            strokeWidth: level % 1000 === 0 ? 1.8 : 0.7,
          }}
        />
      ))}
      {[
        { stroke: 'var(--field)', strokeWidth: 7 },
        { stroke: 'var(--ink)', strokeWidth: 3, strokeDasharray: '14 4 3 4' },
      ].map((style) => (
        <path key={style.strokeWidth} d={path(rings.pace)} style={{ ...style, fill: 'none' }} />
      ))}
      <Figures grid={grid} volts={volts} scale={scale} />
    </g>
  )
}

/** d3-contour counts from the middle of the first cell. */
const pointOf = (grid: GroundGrid, scale: Scale, column: number, row: number): string =>
  `${scale.x(grid.from.x + (column - 0.5) * grid.step)} ${scale.y(grid.from.y + (row - 0.5) * grid.step)}`

function ringsOf(grid: GroundGrid, volts: readonly number[], tolerable: number) {
  const trace = contours().size([grid.columns, grid.rows])
  const most = Math.max(...volts)
  const levels = (step: number) => Array.from({ length: Math.floor(most / step) }, (_, i) => (i + 1) * step)
  const at = (field: readonly number[], level: number) => ({
    level,
    polygons: trace.contour(field as number[], level).coordinates as unknown as readonly (readonly Ring[])[],
  })
  const pace = at(paceField(grid, volts), tolerable).polygons.map((polygon) => polygon[0]!)
  return {
    tints: levels(tint)
      .slice(0, 8)
      .map((level) => at(volts, level)),
    lines: levels(interval).map((level) => at(volts, level)),
    // Pockets of low gradient inside the outer line are not offered as safe.
    pace: pace.filter((ring) => ring.length > 8),
  }
}

/** Volts between two feet one metre apart along the steepest slope. */
function paceField(grid: GroundGrid, volts: readonly number[]): readonly number[] {
  const { columns, rows, step } = grid
  const half = Math.max(1, Math.round(0.5 / step))
  const at = (c: number, r: number) =>
    volts[Math.min(rows - 1, Math.max(0, r)) * columns + Math.min(columns - 1, Math.max(0, c))] ?? 0
  return volts.map((_, i) => {
    const c = i % columns
    const r = Math.floor(i / columns)
    const x = at(c + half, r) - at(c - half, r)
    const y = at(c, r + half) - at(c, r - half)
    return Math.sqrt(x * x + y * y) / (2 * half * step)
  })
}

/** Where the ray to the west-north-west passes each index line. */
function Figures({ grid, volts, scale }: Pick<GroundContoursProps, 'grid' | 'volts' | 'scale'>) {
  const found = new Map<number, readonly [number, number]>()
  const wanted = [250, 500, 750, 1000, 1500, 2000, 3000, 4000]
  for (let t = 18; t > 0.2; t -= 0.05) {
    const [x, y] = [-0.92 * t, 0.39 * t]
    const c = Math.round((x - grid.from.x) / grid.step)
    const r = Math.round((y - grid.from.y) / grid.step)
    const value = volts[r * grid.columns + c] ?? 0
    for (const level of wanted) if (value >= level && !found.has(level)) found.set(level, [x, y])
  }
  const placed = [...found].filter(
    ([level, [x]], i, all) => i === 0 || Math.abs(x - all[i - 1]![1][0]) * scale.perMetre > 26 || level % 1000 === 0,
  )
  return placed.map(([level, [x, y]]) => (
    <text key={level} className='t-c halo mid' x={tenth(scale.x(x))} y={tenth(scale.y(y) + 4)}>
      {plain(level, 0)}
    </text>
  ))
}
