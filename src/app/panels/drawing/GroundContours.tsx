/**
 * Ground potential as a surveyor draws a hill: flat tints, lines at one even interval, every fifth heavy, figures along
 * one quiet ray. Even interval on purpose: spacing is steepness. The line beyond which a pace is tolerable is the engine's
 * own, drawn over everything.
 */
import { contours } from 'd3-contour'
import { useMemo } from 'react'
import type { GroundGrid, GroundPoint } from '../../../engine'
import { plain } from '../../../text'
import { heavyEach } from '../../stores/contours'
import type { Scale } from './pen'
import { pathOf, tenth } from './pen'

export interface GroundContoursProps {
  readonly grid: GroundGrid
  readonly volts: readonly number[]
  /** Volts from line to line. */
  readonly interval: number
  /** Volts of the highest ground. */
  readonly top: number
  /** Outlines of where a pace is too high. */
  readonly zone: readonly (readonly GroundPoint[])[]
  /** The electrode that lifts the ground most: figures stand on a ray from it. */
  readonly strongest: GroundPoint
  readonly scale: Scale
  readonly width: number
  readonly height: number
}

/** Tints of the ramp. */
const tints = 9

type Ring = readonly (readonly number[])[]

export function GroundContours({
  grid,
  volts,
  interval,
  top,
  zone,
  strongest,
  scale,
  width,
  height,
}: GroundContoursProps) {
  const rings = useMemo(() => ringsOf(grid, volts, interval, top), [grid, volts, interval, top])
  const path = (list: readonly Ring[]) =>
    list.map((ring) => `M${ring.map(([c, r]) => pointOf(grid, scale, c!, r!)).join('L')}Z`).join('')
  const outline = zone
    .map((ring) =>
      pathOf(
        ring.map(({ x, y }) => [scale.x(x), scale.y(y)] as const),
        true,
      ),
    )
    .join('')
  return (
    <g>
      <rect width={width} height={height} style={{ fill: 'var(--v1)' }} />
      {rings.tints.map(({ level, polygons }, i) => (
        <path
          key={level}
          d={path(polygons.flat())}
          style={{ fill: `var(--v${Math.min(tints, i + 2)})`, fillRule: 'evenodd' }}
        />
      ))}
      {rings.lines.map(({ level, polygons, isHeavy }) => (
        <path
          key={level}
          className='d-contour'
          data-volts={level}
          d={path(polygons.flat())}
          style={{
            fill: 'none',
            stroke: level > top * 0.6 ? 'var(--paper)' : 'var(--contour)',
            strokeWidth: isHeavy ? 1.8 : 0.7,
          }}
        />
      ))}
      {outline !== '' &&
        [
          { stroke: 'var(--field)', strokeWidth: 7 },
          { stroke: 'var(--ink)', strokeWidth: 3, strokeDasharray: '14 4 3 4' },
        ].map((style) => <path key={style.strokeWidth} d={outline} style={{ ...style, fill: 'none' }} />)}
      <Figures grid={grid} volts={volts} interval={interval} strongest={strongest} scale={scale} />
    </g>
  )
}

/** d3-contour counts from the middle of the first cell. */
const pointOf = (grid: GroundGrid, scale: Scale, column: number, row: number): string =>
  `${tenth(scale.x(grid.from.x + (column - 0.5) * grid.step))} ${tenth(scale.y(grid.from.y + (row - 0.5) * grid.step))}`

function ringsOf(grid: GroundGrid, volts: readonly number[], interval: number, top: number) {
  const trace = contours().size([grid.columns, grid.rows])
  const count = Math.floor(top / interval)
  const perTint = Math.max(1, Math.ceil(count / tints))
  const at = (level: number) => ({
    level,
    polygons: trace.contour(volts as number[], level).coordinates as unknown as readonly (readonly Ring[])[],
  })
  const lines = Array.from({ length: count }, (_, i) => ({
    ...at((i + 1) * interval),
    isHeavy: (i + 1) % heavyEach === 0,
  }))
  return { lines, tints: lines.filter((_, i) => (i + 1) % perTint === 0).slice(0, tints - 1) }
}

type FiguresProps = Pick<GroundContoursProps, 'grid' | 'volts' | 'interval' | 'strongest' | 'scale'>

/** South, past the stay's word and left of the electrodes' boxes. */
const quiet = [0.2, -0.98] as const

/** Where a ray from the strongest electrode passes a line; no two closer than a figure is wide. */
function Figures({ grid, volts, interval, strongest, scale }: FiguresProps) {
  const [ux, uy] = quiet
  const placed: { readonly level: number; readonly x: number; readonly y: number }[] = []
  let before = -Infinity
  for (let t = 18; t > 0.2; t -= 0.05) {
    const [x, y] = [strongest.x + ux * t, strongest.y + uy * t]
    const c = Math.round((x - grid.from.x) / grid.step)
    const r = Math.round((y - grid.from.y) / grid.step)
    if (c < 0 || r < 0 || c >= grid.columns || r >= grid.rows) continue
    const level = Math.floor((volts[r * grid.columns + c] ?? 0) / interval) * interval
    if (level <= before) continue
    before = Math.max(0, level)
    const last = placed.at(-1)
    const isFree = !last || Math.hypot(x - last.x, y - last.y) * scale.perMetre > 34
    if (level > 0 && isFree) placed.push({ level, x, y })
  }
  return placed.map(({ level, x, y }) => (
    <text key={level} className='t-c halo mid' x={tenth(scale.x(x))} y={tenth(scale.y(y) + 4)}>
      {plain(level, 1)}
    </text>
  ))
}
