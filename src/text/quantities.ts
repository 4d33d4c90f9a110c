/**
 * Quantities as a line worker reads them: two significant figures on screen, a no-break space before the unit and
 * between thousands. Full figures belong to exports. No locale is asked, so that a record reads the same everywhere.
 */

const space = '\u00a0'

/** Rounded to two significant figures, without an exponent. */
export function twoFigures(value: number): string {
  if (!Number.isFinite(value)) return '–'
  if (value === 0) return '0'
  const rounded = Number(value.toPrecision(2))
  const size = Math.abs(rounded)
  const decimals = size >= 10 ? 0 : size >= 1 ? 1 : size >= 0.1 ? 2 : 3
  return withThousands(
    rounded
      .toFixed(decimals)
      .replace(/(\.\d*?)0+$/, '$1')
      .replace(/\.$/, ''),
  )
}

function withThousands(digits: string): string {
  const [whole = '', fraction] = digits.split('.')
  const spaced = whole.replace(/(\d)(?=(\d{3})+$)/g, `$1${space}`)
  return fraction ? `${spaced}.${fraction}` : spaced
}

/** Volts; kilovolts from 10 kV up; what nobody could measure on a site is told as less than that. */
export function volts(value: number): string {
  if (value >= 10_000) return `${twoFigures(value / 1000)}${space}kV`
  return `${value > 0 && value < 0.1 ? '< 0.1' : twoFigures(value)}${space}V`
}

/** Amperes; milliamperes below one, kiloamperes from 10 kA up. */
export function amperes(value: number): string {
  const size = Math.abs(value)
  if (size < 1) return `${milli(value)}${space}mA`
  return size >= 10_000 ? `${twoFigures(value / 1000)}${space}kA` : `${twoFigures(value)}${space}A`
}

const milli = (value: number) => {
  const size = value * 1000
  return size !== 0 && Math.abs(size) < 0.01 ? '< 0.01' : twoFigures(size)
}

/** An estimated share of one: two figures, never nothing and never all. */
export function percent(share: number): string {
  if (share < 0.0005) return `< 0.1${space}%`
  if (share >= 0.9995) return `> 99.9${space}%`
  return `${share > 0.99 ? plain(100 * share, 1) : twoFigures(100 * share)}${space}%`
}

/** A share that was counted: none is none. */
export const countedPercent = (share: number): string => (share === 0 ? `0${space}%` : percent(share))

/** Length as it was set, to a centimetre. */
export const metres = (value: number): string => `${plain(value, 2)}${space}m`

export const seconds = (value: number): string => `${twoFigures(value)}${space}s`

export const ohms = (value: number): string =>
  value >= 1e6
    ? `${twoFigures(value / 1e6)}${space}MΩ`
    : value >= 1e4
      ? `${twoFigures(value / 1000)}${space}kΩ`
      : `${twoFigures(value)}${space}Ω`

/** As few decimals as the value needs, at most so many. */
export function plain(value: number, most: number): string {
  const text = value.toFixed(most)
  return withThousands(text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text)
}

/** Job clock: seconds after midnight as 09:48:12. */
export function timeOfDay(second: number): string {
  const two = (value: number) => String(value).padStart(2, '0')
  return `${two(Math.floor(second / 3600) % 24)}:${two(Math.floor(second / 60) % 60)}:${two(Math.floor(second) % 60)}`
}

/** Half turns as a line worker says them: 4½ turns, 1 turn. */
export function turns(value: number): string {
  const whole = Math.floor(value)
  const isHalf = value - whole === 0.5
  const count = isHalf ? `${whole === 0 ? '' : whole}½` : plain(value, 2)
  return `${count}${space}${value > 0 && value <= 1 ? 'turn' : 'turns'}`
}

/** `2026-03` or `2026-03-14` as 03 2026 or 14 03 2026, the way labels are stamped. */
export const labelDate = (iso: string): string => iso.split('-').reverse().join(' ')
