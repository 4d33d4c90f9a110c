/** Signs of the single-line diagram. */
import type { Belief } from '../../../engine'
import { type Speaker, say } from '../../../text'
import { fuseWords, powerWords } from './networkWords'
import type { Drop } from './singleLineLayout'

type SheetSwitch = Belief['sheet']['switches'][number]
type Fuses = Belief['sheet']['network']['switchFuses'][number]['fuses']

interface StationProps {
  readonly x: number
  readonly y: number
  /** Lower end of the busbar. */
  readonly foot: number
  readonly name: string
  readonly note: string
  readonly isRight: boolean
}

export function Station({ x, y, foot, name, note, isRight }: StationProps) {
  return (
    <g>
      <path d={`M${x} ${y - 40}V${foot}`} className='d-heavy' />
      <text x={isRight ? x + 10 : x - 20} y={isRight ? foot + 16 : y - 46} className={isRight ? 't-b end' : 't-b'}>
        {name}
      </text>
      <text
        x={isRight ? x + 10 : x - 20}
        y={isRight ? foot + 33 : foot + 16}
        className={isRight ? 't-q end halo' : 't-q halo'}
      >
        {note}
      </text>
    </g>
  )
}

export function Breaker({ x, y }: { x: number; y: number }) {
  return (
    <g>
      <rect x={x - 9} y={y - 9} width='18' height='18' className='d-edge' style={{ fill: 'var(--ink)' }} />
      <text x={x} y={y + 24} className='t-q mid'>
        {say('sld.breakerClosed')}
      </text>
    </g>
  )
}

/** A carrier: a box that the wire runs through. */
export function Fuse({ x, y, isLying = false, note }: { x: number; y: number; isLying?: boolean; note?: string }) {
  const [wide, high] = isLying ? [20, 9] : [9, 20]
  return (
    <g>
      <rect
        x={x - wide / 2}
        y={y - high / 2}
        width={wide}
        height={high}
        className='d-edge'
        style={{ fill: 'var(--paper)' }}
      />
      <path d={isLying ? `M${x - 10} ${y}h20` : `M${x} ${y - 10}v20`} className='d-live' style={{ strokeWidth: 1.5 }} />
      {note && (
        <text x={x} y={y - 12} className='t-q mid halo'>
          {note}
        </text>
      )}
    </g>
  )
}

export function Switch({ x, y, it, fuses }: { x: number; y: number; it: SheetSwitch; fuses: Fuses | null }) {
  return (
    <g>
      <path d={`M${x - 15} ${y - 1}L${x + 12} ${it.normally === 'open' ? y - 17 : y}`} className='d-wire' />
      <circle cx={x - 15} cy={y} r='4' className='d-edge' style={{ fill: 'var(--paper)' }} />
      <circle cx={x + 15} cy={y} r='4' className='d-edge' style={{ fill: 'var(--paper)' }} />
      <text x={x} y={y - 24} className='t-b mid halo'>
        {it.label}
      </text>
      {[say(`sld.${it.normally}`), ...besidesOf(it, fuses)].map((words, i) => (
        <text key={words} x={x} y={y + 24 + 15 * i} className='t-q mid halo'>
          {words}
        </text>
      ))}
    </g>
  )
}

/** Each on a line of its own: what stands beside it has no room for a long one. */
const besidesOf = (it: SheetSwitch, fuses: Fuses | null): readonly string[] => [
  ...(it.remote ? [say('sld.remote')] : []),
  ...(fuses ? [fuseWords(fuses)] : []),
]

interface DropProps {
  readonly x: number
  readonly y: number
  readonly line: number
  readonly speaker: Speaker
}

/** A switch to a feeder of its own, off the line. */
export function Branch({ x, y, line, branch, speaker }: DropProps & { branch: SheetSwitch }) {
  const isOpen = branch.normally === 'open'
  return (
    <g>
      <path d={`M${x} ${line}V${y}M${x} ${y + 26}V${y + 44}`} className='d-live' />
      <path d={`M${x} ${y + 24}L${x + (isOpen ? 14 : 0)} ${y + 2}`} className='d-wire' />
      <circle cx={x} cy={y} r='4' className='d-edge' style={{ fill: 'var(--paper)' }} />
      <circle cx={x} cy={y + 26} r='4' className='d-edge' style={{ fill: 'var(--paper)' }} />
      <path d={`M${x - 14} ${y + 44}h28`} className='d-heavy' />
      <text x={x + 20} y={y + 18} className='t-b halo'>
        {[branch.label, say(`sld.${branch.normally}`), ...besidesOf(branch, null)].join(', ')}
      </text>
      <text x={x + 20} y={y + 38} className='t-b halo'>
        {speaker.say(`thing.${branch.feeder}`)}
      </text>
    </g>
  )
}

type Hanging = Extract<Drop['hangs'], { kind: 'transformer' }>

export function TransformerDrop({ x, y, line, transformer, sources, speaker }: DropProps & Hanging) {
  return (
    <g>
      <path d={`M${x} ${line}V${y + 12}`} className='d-live' style={{ strokeWidth: 1.5 }} />
      <circle cx={x} cy={line} r='3' style={{ fill: 'var(--live)' }} />
      {transformer.fuses && <Fuse x={x} y={y - 6} />}
      <circle cx={x} cy={y + 20} r='9' className='d-edge' style={{ fill: 'var(--paper)' }} />
      <circle cx={x} cy={y + 32} r='9' className='d-edge' />
      <text x={x + 18} y={y + 20} className='t-b halo'>
        {speaker.say(`thing.${transformer.id}`)}
      </text>
      <text x={x + 18} y={y + 36} className='t-q halo'>
        {powerWords(transformer)}
      </text>
      {sources.map((source, i) => (
        <Source key={source.id} x={x} y={y + 62 + 32 * i} source={source} speaker={speaker} />
      ))}
    </g>
  )
}

/** A set: round; an inverter: square; the next network: a link that is open. */
function Source({ x, y, source, speaker }: Omit<DropProps, 'line'> & { source: Hanging['sources'][number] }) {
  return (
    <g>
      <path d={`M${x} ${y - 21}v10`} className='d-thin' style={{ strokeDasharray: '2 3' }} />
      {source.kind === 'tie' ? (
        <path d={`M${x} ${y - 11}v5m0 2l9 -6m-9 14v5m-10 0h20`} className='d-edge' />
      ) : (
        <rect
          x={x - 11}
          y={y - 11}
          width='22'
          height='22'
          rx={source.kind === 'generator' ? 11 : 0}
          className='d-edge'
          style={{ fill: 'var(--paper)' }}
        />
      )}
      {source.kind !== 'tie' && <path d={`M${x - 6} ${y}q3 -6 6 0t6 0`} className='d-thin' />}
      <text x={x + 18} y={y + 4} className='halo'>
        {speaker.say(`thing.${source.id}`)}
        {source.kind === 'tie' ? `, ${say('sld.openLink')}` : `, ${powerWords(source)}`}
      </text>
    </g>
  )
}
