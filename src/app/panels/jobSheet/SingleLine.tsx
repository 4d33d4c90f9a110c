/** Single-line diagram, drawn from the job sheet: feeders, breakers, switches, what crosses, the low voltage below. */
import type { Belief } from '../../../engine'
import { type Speaker, say } from '../../../text'
import { Dimension } from '../drawing/Lines'

const width = 616
const line = 66

export function SingleLine({ belief, speaker }: { belief: Belief; speaker: Speaker }) {
  const { switches, feeders, section, pole } = belief.sheet
  const [supply, tie] = [switches.find((it) => it.along < 0), switches.find((it) => it.along > 0)]
  const crossing = feeders.find((feeder) => !switches.some((it) => it.feeder === feeder.id))
  return (
    <svg viewBox={`0 0 ${width} 176`} width='100%' role='img' aria-label={say('sld.title')}>
      <Station x={30} name={speaker.say(`thing.${supply?.feeder}`)} />
      <Station x={586} name={speaker.say(`thing.${tie?.feeder}`)} isRight />
      <path d={`M30 ${line}H140M174 ${line}H400M434 ${line}H586`} className='d-live' />
      <Breaker x={70} />
      <Breaker x={520} />
      {supply && <Switch x={140} label={supply.label} isOpen={supply.normally === 'open'} note={switchNote(supply)} />}
      {tie && <Switch x={400} label={tie.label} isOpen={tie.normally === 'open'} note={switchNote(tie)} />}
      <path d='M322 4L280 128' className='d-live' />
      {[18, 34, 90, 108].map((y) => (
        <path key={y} d={`M${326 - y * 0.34 - 9} ${y - 3}l12 6`} className='d-live' style={{ strokeWidth: 1.5 }} />
      ))}
      {crossing && (
        <text x='332' y='16' className='t-live halo'>
          {speaker.say(`thing.${crossing.id}`)}, {say('sld.crosses', { along: section.crossingAlong })}
        </text>
      )}
      <circle cx='250' cy={line} r='9' style={{ fill: 'var(--paper)', stroke: 'var(--accent)', strokeWidth: 3 }} />
      <text x='236' y={line - 16} className='t-b t-acc halo mid'>
        {pole.number}
      </text>
      <path d='M214 118H420' className='d-live' style={{ strokeWidth: 1, strokeDasharray: '2 3' }} />
      <path d={`M250 ${line + 9}V114`} className='d-thin' />
      <text x='262' y='136' className='halo'>
        {say('sld.lv')}
      </text>
      {supply && <Dimension from={[174, 164]} to={[250, 164]} label={`${Math.abs(supply.along)} m`} />}
      {tie && <Dimension from={[250, 164]} to={[400, 164]} label={`${tie.along} m`} />}
    </svg>
  )
}

const switchNote = (it: { normally: 'open' | 'closed'; remote: boolean }): string =>
  it.remote ? say(`sld.${it.normally}Remote`) : say(`sld.${it.normally}`)

function Station({ x, name, isRight = false }: { x: number; name: string; isRight?: boolean }) {
  return (
    <g>
      <path d={`M${x} 26V106`} className='d-heavy' />
      <text x={isRight ? x + 10 : x - 10} y={isRight ? 122 : 18} className={isRight ? 't-b end' : 't-b'}>
        {name}
      </text>
    </g>
  )
}

function Breaker({ x }: { x: number }) {
  return (
    <g>
      <rect x={x} y={line - 9} width='18' height='18' className='d-edge' style={{ fill: 'var(--ink)' }} />
      <text x={x + 9} y={line + 24} className='t-q mid'>
        {say('sld.closed')}
      </text>
    </g>
  )
}

function Switch({ x, label, isOpen, note }: { x: number; label: string; isOpen: boolean; note: string }) {
  return (
    <g>
      <circle cx={x} cy={line} r='4' className='d-edge' style={{ fill: 'var(--paper)' }} />
      <circle cx={x + 30} cy={line} r='4' className='d-edge' style={{ fill: 'var(--paper)' }} />
      <path d={`M${x + 4} ${line - 1}L${x + 27} ${isOpen ? line - 17 : line}`} className='d-wire' />
      <text x={x + 15} y={line - 24} className='t-b mid'>
        {label}
      </text>
      <text x={x + 15} y={line + 24} className='t-q mid'>
        {note}
      </text>
    </g>
  )
}
