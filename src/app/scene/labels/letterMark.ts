/**
 * A conductor's letter in the shape of its state: diamond = treat as live, ring = tested, ring on bars = earthed, ring on
 * a wave = earthed but lifted. Shape first, colour as the third cue.
 */
import type { WireState } from '../site/sitePicture'

const svgSpace = 'http://www.w3.org/2000/svg'

const make = (name: string, attributes: Readonly<Record<string, string>>): SVGElement => {
  const element = document.createElementNS(svgSpace, name)
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value)
  return element
}

const ring = () => make('circle', { cx: '14', cy: '13', r: '10.5', class: 'scene-mark-outline' })
const bars = () => make('path', { d: 'M14 23.5v3M7 27h14M9.5 30h9M12 33h4', class: 'scene-mark-bars' })

const shapes: Readonly<Record<WireState, () => readonly SVGElement[]>> = {
  live: () => [make('path', { d: 'M14 0.8L27.2 14L14 27.2L0.8 14Z', class: 'scene-mark-outline' })],
  tested: () => [ring()],
  earthed: () => [ring(), bars()],
  risen: () => [ring(), make('path', { d: 'M3 29q5.5 -7 11 0t11 0', class: 'scene-mark-wave' })],
}

export function letterMark(letter: string, state: WireState): SVGElement {
  const mark = make('svg', { width: '28', height: '35', viewBox: '0 0 28 35', class: `scene-mark scene-mark-${state}` })
  const text = make('text', {
    x: '14',
    y: state === 'live' ? '18.6' : '17.6',
    'text-anchor': 'middle',
    class: 'scene-mark-letter',
  })
  text.textContent = letter
  mark.append(...shapes[state](), text)
  return mark
}

/** The trainee's own mark: a triangle with its number. */
export function hazardMark(number: string): SVGElement {
  const mark = make('svg', { width: '24', height: '22', viewBox: '0 0 24 22', class: 'scene-mark scene-mark-hazard' })
  const text = make('text', { x: '12', y: '18', 'text-anchor': 'middle', class: 'scene-mark-letter' })
  text.textContent = number
  mark.append(make('path', { d: 'M12 0.8L23.4 21H0.6Z', class: 'scene-mark-triangle' }), text)
  return mark
}
