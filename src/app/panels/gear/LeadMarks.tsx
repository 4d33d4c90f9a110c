/** What a look at a lead showed: along its cable, and at each end in the measures of its clamp. */
import type { ReactNode } from 'react'
import { crack, cut, fray, gone, mud, put, specks, stain, strokes, swelling } from './MarkParts'

const paper = { stroke: 'var(--paper)' }

/** At any end, in the clamp's own measures (100 by 156). */
export const endMarks: Readonly<Record<string, ReactNode>> = {
  'worn-jaw': <path d='M22 54q14 20 32 -2' className='d-heavy' style={{ ...paper, strokeWidth: 7 }} />,
  'bent-eye': put(
    42,
    146,
    38,
    <path d='M0 -26V8a10 10 0 1 0 .1 0' style={{ fill: 'none', stroke: 'var(--ink)', strokeWidth: 7 }} />,
  ),
  'cross-thread': strokes(42, 108, 62, 7, 18),
  'painted-earth-seat': stain(42, 56, 'leaf', 0.8),
  'clamp-on-paint': stain(42, 56, 'leaf', 0.9),
  'loose-swivel': (
    <g>
      {gone(16, 98, 52, 18)}
      <path d='M14 120q28 18 56 0' className='d-wire' />
    </g>
  ),
  'cracked-ferrule': crack(90, 94, 70, 0.8),
  'necked-cable': (
    <path d='M102 84q12 11 28 8M102 106q12 -9 28 -6' style={{ ...paper, fill: 'none', strokeWidth: 8 }} />
  ),
  'tail-missing': gone(-8, -8, 116, 172),
}

const onCable = (x: number, y: number) => ({
  'cut-jacket': cut(x, y, -4, 26),
  'bird-caged-strands': fray(x + 22, y, 4),
  'green-strands': stain(x - 50, y - 22, 'leaf', 0.5),
  'swollen-jacket': swelling(x - 16, y, 'copper'),
  'scuffed-jacket': strokes(x + 6, y - 8, 80, 8, 15),
})

const oxide = (...jaws: readonly number[]) => (
  <g>
    {jaws.map((x) => (
      <g key={x}>{stain(x, 56, 'steel', 0.45)}</g>
    ))}
  </g>
)

const chained = {
  ...onCable(204, 234),
  'jaw-oxide': oxide(208, 362, 516),
  'mud-on-clamps': mud(360, 78, 0.7),
  'tool-marks': strokes(366, 84, 20, 5, 14),
}

export const leadMarks: Readonly<Record<string, Readonly<Record<string, ReactNode>>>> = {
  'earth-lead': chained,
  'spring-lead': { ...chained, 'rusty-spring': stain(364, 88, 'glaze', 0.4) },
  'earth-set': {
    ...chained,
    ...onCable(196, 137),
    'jaw-oxide': oxide(256, 394, 532),
    'loose-boss': (
      <g>
        {gone(316, 200, 28, 28)}
        <path d='M300 240q30 14 60 0' className='d-wire' />
      </g>
    ),
    'rubbed-boss': strokes(330, 204, 10, 6, 18),
  },
  'isolation-earth': {
    'loose-boss': gone(316, 200, 28, 28),
    'missing-lead': gone(496, 12, 88, 190),
    'scuffed-jacket': strokes(150, 150, 60, 7, 14),
  },
  'lv-bond-set': {
    'loose-bar': gone(330, 202, 30, 32),
    'faded-bands': (
      <path d='M112 150h14M224 150h14M336 150h14' style={{ stroke: 'var(--field)', strokeWidth: 12, opacity: 0.7 }} />
    ),
  },
  'bond-lead': {
    'cut-jacket': cut(370, 226, -2, 26),
    'bared-end': fray(190, 128, 30),
    'paint-specks': specks(420, 224, 120, 18, 'leaf'),
  },
  'bypass-lead': {
    'cut-jacket': cut(370, 226, -2, 26),
    'chalk-marks': (
      <path d='M330 214l16 20m0 -20l-16 20' style={{ fill: 'none', stroke: 'var(--field)', strokeWidth: 5 }} />
    ),
  },
  'truck-bond-lead': {
    'cut-jacket': cut(400, 226, -2, 26),
    'corroded-reel': stain(330, 110, 'leaf', 1.4),
    'oil-stain': stain(260, 222, 'glaze', 0.5),
  },
}
