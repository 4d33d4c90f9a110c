/**
 * Single-line diagram, drawn from the job sheet: feeders, breakers, switches, what crosses and what runs beside,
 * transformers with what can feed them from below, the neutral, the low voltage.
 */
import type { Belief } from '../../../engine'
import { type Speaker, plain, say } from '../../../text'
import { Dimension } from '../drawing/Lines'
import { Branch, Breaker, Fuse, Station, Switch, TransformerDrop } from './SingleLineMarks'
import { fuseWords, neutralWords } from './networkWords'
import { type SingleLineLayout, layOut, width } from './singleLineLayout'

interface Props {
  readonly belief: Belief
  readonly speaker: Speaker
}

export function SingleLine({ belief, speaker }: Props) {
  const { sheet } = belief
  const at = layOut(sheet)
  const { line, supply, tie } = at
  const end = tie ? 586 : 540
  return (
    <svg viewBox={`0 0 ${width} ${at.height}`} width='100%' role='img' aria-label={say('sld.title')}>
      <path d={gaps([30, end], line, [supply?.x, tie?.x])} className='d-live' />
      {!tie && <path d={`M${end} ${line - 8}v16`} className='d-edge' />}
      <Ends belief={belief} speaker={speaker} at={at} />
      <NeutralWire belief={belief} at={at} end={end} />
      <Crossings belief={belief} speaker={speaker} at={at} />
      {at.parallels.map((it) => (
        <Parallel key={it.it.id} {...it} crossing={at.crossing + (line - it.y) * slope} speaker={speaker} />
      ))}
      {sheet.lv.wires.length > 0 && <LowVoltage belief={belief} speaker={speaker} at={at} />}
      {at.drops.map(({ x, y, hangs }) =>
        hangs.kind === 'transformer' ? (
          <TransformerDrop key={hangs.transformer.id} x={x} y={y} line={line} {...hangs} speaker={speaker} />
        ) : (
          <Branch key={hangs.branch.id} x={x} y={y} line={line} branch={hangs.branch} speaker={speaker} />
        ),
      )}
      <circle cx={at.pole} cy={line} r='9' style={{ fill: 'var(--paper)', stroke: 'var(--accent)', strokeWidth: 3 }} />
      <text x={at.pole - 14} y={line - 16} className='t-b t-acc halo mid'>
        {sheet.pole.number}
      </text>
      {supply && (
        <Dimension
          from={[supply.x, at.height - 12]}
          to={[at.pole, at.height - 12]}
          label={`${plain(-supply.it.along, 0)} m`}
        />
      )}
      {tie && (
        <Dimension
          from={[at.pole, at.height - 12]}
          to={[tie.x, at.height - 12]}
          label={`${plain(tie.it.along, 0)} m`}
        />
      )}
    </svg>
  )
}

interface PartProps extends Props {
  readonly at: SingleLineLayout
}

/** The line from end to end, open where a switch stands in it. */
function gaps([from, to]: readonly [number, number], y: number, at: readonly (number | undefined)[]): string {
  const cuts = at.flatMap((x) => (x === undefined ? [] : [x]))
  return `M${from} ${y}${cuts.map((x) => `H${x - 19}M${x + 19} ${y}`).join('')}H${to}`
}

/** Stations, breakers and fuses, the switches that stand in the line. */
function Ends({ belief, speaker, at: { line, neutral, supply, tie } }: PartProps) {
  const { feeders, conductors } = belief.sheet
  const feeds = [
    { side: supply, x: 30, breaker: 62, fuse: 94, isRight: false },
    { side: tie, x: 586, breaker: 536, fuse: 506, isRight: true },
  ]
  return feeds.map(({ side, x, breaker, fuse, isRight }) => {
    if (!side) return null
    const { it } = side
    const feeder = feeders.find(({ id }) => id === it.feeder)
    return (
      <g key={it.id}>
        <Station
          x={x}
          y={line}
          foot={neutral === null ? line + 40 : neutral + 5}
          name={speaker.say(`thing.${it.feeder}`)}
          note={feeder ? neutralWords(feeder.neutral, conductors.length) : ''}
          isRight={isRight}
        />
        <Breaker x={breaker} y={line} />
        {feeder?.fuses && <Fuse x={fuse} y={line} isLying note={fuseWords(feeder.fuses)} />}
        <Switch x={side.x} y={line} it={it} fuses={fusesOf(belief, it.id)} />
      </g>
    )
  })
}

const fusesOf = (belief: Belief, id: string) =>
  belief.sheet.network.switchFuses.find((it) => it.switch === id)?.fuses ?? null

function NeutralWire({ belief, at: { neutral, pole }, end }: Pick<PartProps, 'belief' | 'at'> & { end: number }) {
  const wire = belief.sheet.feeders.find((it) => it.neutralWire)?.neutralWire
  if (neutral === null || !wire) return null
  const earths = [100, 200, pole, 400, 500].filter((x) => x < end)
  return (
    <g>
      <path d={`M30 ${neutral}H${end}`} className='d-edge' />
      {earths.map((x) => (
        <path key={x} d={`M${x} ${neutral}v8m-6 0h12m-9 3h6`} className='d-thin' />
      ))}
      <text x='126' y={neutral - 5} className='t-q halo'>
        {say('sld.neutralWire', { every: wire.earthEvery })}
      </text>
    </g>
  )
}

/** Of what crosses, to the right for each pixel up. */
const slope = 42 / 124

type ParallelProps = SingleLineLayout['parallels'][number] & { readonly crossing: number; readonly speaker: Speaker }

/** Its words on that side of the crossing line where they have room. */
function Parallel({ y, from, to, it, crossing, speaker }: ParallelProps) {
  const isLeft = crossing > 330
  return (
    <g>
      <path d={`M${from} ${y}H${to}`} className='d-live' style={{ strokeWidth: 1.5 }} />
      <text
        x={isLeft ? Math.min(crossing - 16, to) : Math.max(crossing + 16, from)}
        y={y - 5}
        className={isLeft ? 't-live halo end' : 't-live halo'}
      >
        {say('sld.parallel', { name: speaker.say(`thing.${it.id}`), kilovolts: plain(it.voltage / 1000, 2) })}
      </text>
    </g>
  )
}

function Crossings({ belief, speaker, at: { line, crossing: x } }: PartProps) {
  const { feeders, switches, section } = belief.sheet
  const crossing = feeders.filter((feeder) => !switches.some((it) => it.feeder === feeder.id))
  if (crossing.length === 0) return null
  const low = line + 40
  const onLine = (y: number): number => x + (line - y) * slope
  // Its words are as long as the right half.
  const isRight = onLine(14) > width / 2
  return (
    <g>
      <path d={`M${onLine(4)} 4L${onLine(low)} ${low}`} className='d-live' />
      {[18, line - 24, line + 24].map((y) => (
        <path key={y} d={`M${onLine(y) - 6} ${y - 3}l12 6`} className='d-live' style={{ strokeWidth: 1.5 }} />
      ))}
      <text x={isRight ? width - 4 : onLine(14) + 10} y='16' className={isRight ? 't-live halo end' : 't-live halo'}>
        {crossing.map(({ id }) => speaker.say(`thing.${id}`)).join(', ')},{' '}
        {say('sld.crosses', { along: Math.abs(section.crossingAlong) })}
      </text>
    </g>
  )
}

function LowVoltage({ belief, speaker, at: { line, pole, lowVoltage } }: PartProps) {
  const { network } = belief.sheet
  const { lowVoltageFedBy: fedBy } = network
  const isRight = pole > width / 2
  return (
    <g>
      {/* Broken between: other things hang there, with their words. */}
      <path d={`M${pole} ${line + 9}v10M${pole} ${lowVoltage - 18}v14`} className='d-thin' />
      <path
        d={`M${pole - 36} ${lowVoltage}H${pole + 170}`}
        className='d-live'
        style={{ strokeWidth: 1, strokeDasharray: '2 3' }}
      />
      <text
        x={isRight ? Math.min(pole + 170, width - 12) : pole - 36}
        y={lowVoltage + 18}
        className={isRight ? 'halo end' : 'halo'}
      >
        {fedBy ? say('sld.lvFrom', { name: speaker.say(`thing.${fedBy}`) }) : say('sld.lv')}
      </text>
    </g>
  )
}
