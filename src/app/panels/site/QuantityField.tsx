/**
 * A figure with its steppers and, where length or turn matters, a ruler: typing, minus, plus, Shift with an arrow key, and dragging
 * along the ruler change the same value. It starts empty: nothing that is graded comes filled in.
 */
import { useRef } from 'react'
import { say } from '../../../text'

export interface QuantityFieldProps {
  readonly label: string
  readonly unit: string
  readonly low: number
  readonly high: number
  readonly step: number
  /** As written; may be unfinished. */
  readonly value: string
  readonly onChange: (value: string) => void
}

export function QuantityField({ label, unit, low, high, step, value, onChange }: QuantityFieldProps) {
  const number = Number(value.replace(',', '.'))
  const move = (by: number) => {
    const start = value === '' || Number.isNaN(number) ? low : number + by
    onChange(tidy(Math.min(high, Math.max(low, Math.round(start / step) * step))))
  }
  return (
    <div>
      <div className='qlab'>
        <span>{label}</span>
        <span>{say('quantity.range', { low: tidy(low), high: tidy(high), unit })}</span>
      </div>
      <div className='qty'>
        <button type='button' tabIndex={-1} aria-label={say('quantity.less', { label })} onClick={() => move(-step)}>
          −
        </button>
        <input
          inputMode='decimal'
          aria-label={`${label}, ${unit}`}
          value={value}
          onChange={(event) => onChange(event.target.value)}
          onKeyDown={(event) => {
            if (!event.shiftKey || (event.key !== 'ArrowUp' && event.key !== 'ArrowDown')) return
            event.preventDefault()
            event.stopPropagation()
            move(event.key === 'ArrowUp' ? step : -step)
          }}
        />
        <button type='button' tabIndex={-1} aria-label={say('quantity.more', { label })} onClick={() => move(step)}>
          +
        </button>
      </div>
      <Ruler
        low={low}
        high={high}
        step={step}
        value={number}
        isSet={value !== '' && !Number.isNaN(number)}
        onSet={onChange}
      />
    </div>
  )
}

const tidy = (value: number): string => String(Number(value.toFixed(3)))

interface RulerProps {
  readonly low: number
  readonly high: number
  readonly step: number
  readonly value: number
  readonly isSet: boolean
  readonly onSet: (value: string) => void
}

const wide = 240

/** A drafting scale; the pointer drags along it. */
function Ruler({ low, high, step, value, isSet, onSet }: RulerProps) {
  const ref = useRef<SVGSVGElement>(null)
  const span = high - low
  const tick = Math.max(step, roundStep(span / 36))
  const written = Math.max(step, roundStep(span / 5))
  const toX = (figure: number) => 6 + ((figure - low) / span) * (wide - 12)
  const drag = (clientX: number) => {
    const box = ref.current?.getBoundingClientRect()
    if (!box) return
    const share = ((clientX - box.left) / box.width) * wide
    const figure = low + ((share - 6) / (wide - 12)) * span
    onSet(tidy(Math.min(high, Math.max(low, Math.round(figure / step) * step))))
  }
  return (
    <svg
      ref={ref}
      viewBox={`0 0 ${wide} 44`}
      width='100%'
      height='44'
      preserveAspectRatio='none'
      className='hit ruler'
      aria-hidden='true'
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId)
        drag(event.clientX)
      }}
      onPointerMove={(event) => event.buttons > 0 && drag(event.clientX)}
    >
      <path d={`M6 14H${wide - 6}`} className='d-edge' />
      {marksOf(low, high, tick).map((figure) => (
        <path key={figure} d={`M${toX(figure)} 14v${isMark(figure, written) ? 8 : 5}`} className='d-thin' />
      ))}
      {marksOf(low, high, written).map((figure) => (
        <text key={figure} x={toX(figure)} y='36' className={`t-q ${placed(figure, low, high)}`}>
          {tidy(figure)}
        </text>
      ))}
      {isSet && value >= low && value <= high && (
        <path d={`M${toX(value)} 15l-6 -10h12Z`} style={{ fill: 'var(--accent)' }} />
      )}
    </svg>
  )
}

/** The next of 1, 2, 5, 10 … that is not smaller. */
function roundStep(least: number): number {
  const ten = 10 ** Math.floor(Math.log10(least))
  return ten * ([1, 2, 5].find((it) => it * ten >= least * 0.999) ?? 10)
}

/** Whole multiples of the step, as a scale has them. */
function marksOf(low: number, high: number, step: number): readonly number[] {
  const first = Math.ceil(low / step - 1e-9)
  const last = Math.floor(high / step + 1e-9)
  return Array.from({ length: last - first + 1 }, (_, k) => (first + k) * step)
}

const isMark = (figure: number, step: number): boolean => Math.abs(figure / step - Math.round(figure / step)) < 1e-6

/** Inside the scale at its ends. */
const placed = (figure: number, low: number, high: number): string =>
  figure - low < (high - low) * 0.05 ? '' : high - figure < (high - low) * 0.05 ? 'end' : 'mid'
