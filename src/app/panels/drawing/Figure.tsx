/** A person in elevation: an outline in the sheet's pens, jointed, with the current's path drawn through the body. */
import { type Point, pathOf, tenth } from './pen'

type Joint =
  | 'head'
  | 'neck'
  | 'hip'
  | 'kneeLeft'
  | 'footLeft'
  | 'kneeRight'
  | 'footRight'
  | 'elbowLeft'
  | 'handLeft'
  | 'elbowRight'
  | 'handRight'
  | 'thigh'

type Posture = Readonly<Record<Joint, Point>>

const legs = {
  kneeLeft: [-0.1, 0.48],
  footLeft: [-0.13, 0.05],
  kneeRight: [0.1, 0.48],
  footRight: [0.13, 0.05],
  thigh: [-0.1, 0.72],
} as const
const arms = {
  elbowLeft: [-0.29, 1.16],
  handLeft: [-0.26, 0.88],
  elbowRight: [0.29, 1.16],
  handRight: [0.26, 0.88],
} as const
const upright = { head: [0, 1.63], neck: [0, 1.46], hip: [0, 0.92] } as const
const onPole = {
  head: [0.38, 1.63],
  neck: [0.42, 1.43],
  hip: [0.54, 0.9],
  kneeLeft: [0.42, 0.5],
  footLeft: [0.17, 0.06],
  kneeRight: [0.5, 0.52],
  footRight: [0.2, 0.28],
  thigh: [0.3, 0.74],
} as const

/** Joints in metres: across from the standing point, up from the ground. On the pole the pole is at 0. */
export const postures = {
  standing: { ...upright, ...legs, ...arms },
  watching: { ...upright, ...legs, ...arms, elbowLeft: [-0.27, 1.2], handLeft: [-0.12, 1.6] },
  pacing: {
    head: [0, 1.61],
    neck: [0, 1.44],
    hip: [0, 0.9],
    kneeLeft: [-0.2, 0.48],
    footLeft: [-0.4, 0.05],
    kneeRight: [0.2, 0.5],
    footRight: [0.4, 0.05],
    elbowLeft: [-0.25, 1.15],
    handLeft: [-0.34, 0.9],
    elbowRight: [0.25, 1.15],
    handRight: [0.34, 0.9],
    thigh: [-0.1, 0.7],
  },
  climbing: {
    ...onPole,
    elbowLeft: [0.14, 1.6],
    handLeft: [0.17, 1.95],
    elbowRight: [0.68, 1.16],
    handRight: [0.5, 0.98],
  },
  stick: {
    ...onPole,
    elbowLeft: [0.42, 1.12],
    handLeft: [0.63, 1.5],
    elbowRight: [0.68, 1.12],
    handRight: [0.68, 1.42],
  },
  reaching: {
    ...onPole,
    elbowLeft: [0.15, 1.62],
    handLeft: [0.17, 1.98],
    elbowRight: [0.66, 1.12],
    handRight: [0.4, 1.3],
  },
} as const satisfies Record<string, Posture>

export type PostureName = keyof typeof postures

export interface FigureProps {
  readonly x: number
  readonly y: number
  /** Pixels per metre. */
  readonly size: number
  readonly posture: PostureName
  readonly isMirrored?: boolean
  readonly hasBoots?: boolean
  /** Joints that the current passes, first to last. */
  readonly path?: readonly Joint[]
  readonly pathColour?: string
}

export function Figure({
  x,
  y,
  size,
  posture,
  isMirrored = false,
  hasBoots = false,
  path,
  pathColour = 'var(--live)',
}: FigureProps) {
  const m = isMirrored ? -1 : 1
  const at = (joint: Joint): Point => {
    const [a, b] = postures[posture][joint]
    return [x + m * a * size, y - b * size]
  }
  const neck = at('neck')
  const hip = at('hip')
  const head = at('head')
  const shoulderLeft: Point = [neck[0] - m * 0.15 * size, neck[1] + 0.05 * size]
  const shoulderRight: Point = [neck[0] + m * 0.15 * size, neck[1] + 0.05 * size]
  const hipLeft: Point = [hip[0] - m * 0.07 * size, hip[1]]
  const hipRight: Point = [hip[0] + m * 0.07 * size, hip[1]]
  const limbs = [
    [shoulderLeft, at('elbowLeft'), at('handLeft')],
    [shoulderRight, at('elbowRight'), at('handRight')],
    [hipLeft, at('kneeLeft'), at('footLeft')],
    [hipRight, at('kneeRight'), at('footRight')],
  ]
  const trunk = pathOf(
    [
      shoulderLeft,
      shoulderRight,
      [hipRight[0] + m * 0.05 * size, hipRight[1]],
      [hipLeft[0] - m * 0.05 * size, hipLeft[1]],
    ],
    true,
  )
  const width = Math.max(size * 0.13, 5)
  const limbLines = (colour: string, stroke: number) =>
    limbs.map((points, i) => (
      <path
        key={i}
        d={pathOf(points)}
        style={{
          stroke: colour,
          strokeWidth: tenth(stroke),
          fill: 'none',
          strokeLinecap: 'round',
          strokeLinejoin: 'round',
        }}
      />
    ))
  return (
    <g>
      {limbLines('var(--ink)', width + 2.4)}
      <path
        d={trunk}
        style={{ fill: 'var(--field)', stroke: 'var(--ink)', strokeWidth: 2.4, strokeLinejoin: 'round' }}
      />
      {limbLines('var(--field)', width)}
      <path d={trunk} style={{ fill: 'var(--field)' }} />
      <circle
        cx={tenth(head[0])}
        cy={tenth(head[1])}
        r={tenth(0.115 * size)}
        className='d-edge'
        style={{ fill: 'var(--field)' }}
      />
      <path
        d={`M${tenth(head[0] - 0.15 * size)} ${tenth(head[1] - 0.01 * size)}a${tenth(0.125 * size)} ${tenth(0.14 * size)} 0 0 1 ${tenth(0.25 * size)} 0h${tenth(0.06 * size)}`}
        className='d-edge'
        style={{ fill: 'var(--field)' }}
      />
      {hasBoots &&
        [at('footLeft'), at('footRight')].map((foot, i) => (
          <path
            key={i}
            d={`M${tenth(foot[0] - 0.06 * size)} ${tenth(foot[1] - 0.24 * size)}h${tenth(0.12 * size)}v${tenth(0.2 * size)}h${tenth(m * 0.07 * size)}v${tenth(0.09 * size)}h${tenth(-0.19 * size)}Z`}
            style={{ fill: 'var(--m-rubber)', stroke: 'var(--ink)', strokeWidth: 1 }}
          />
        ))}
      {path && path.length > 1 && (
        <g>
          <path
            d={pathOf(path.map(at))}
            className='d-heavy'
            style={{ stroke: pathColour, strokeLinecap: 'round', strokeLinejoin: 'round' }}
          />
          {[path[0]!, path.at(-1)!].map((joint, i) => (
            <circle
              key={i}
              cx={tenth(at(joint)[0])}
              cy={tenth(at(joint)[1])}
              r={tenth(Math.max(4, 0.06 * size))}
              style={{ fill: 'var(--field)', stroke: pathColour, strokeWidth: 'var(--p-wire)' }}
            />
          ))}
        </g>
      )}
    </g>
  )
}

export type { Joint }
