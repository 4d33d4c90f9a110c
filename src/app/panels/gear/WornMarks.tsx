/** What a look at worn gear, blankets and platforms showed, with the same pens as all findings. */
import type { ReactNode } from 'react'
import { crack, cut, drops, gone, hole, mud, specks, stain, strokes } from './MarkParts'

const cracks = (x: number, y: number, wide: number) => (
  <g>
    {[0, 1, 2, 3, 4].map((i) => (
      <g key={i}>{crack(x + ((i * 37) % 100) * wide * 0.01, y + i * 13, i * 14, 0.6)}</g>
    ))}
  </g>
)

export const wornMarks: Readonly<Record<string, Readonly<Record<string, ReactNode>>>> = {
  'leather-protectors': {
    'wire-in-palm': (
      <path d='M188 132l34 34M216 128l-10 22' style={{ fill: 'none', stroke: 'var(--m-steel)', strokeWidth: 4 }} />
    ),
    hole: hole(196, 50, 7),
    oil: stain(200, 150, 'glaze', 0.8),
    'rubbed-palm': strokes(200, 126, 10, 6, 30),
  },
  sleeves: {
    'ozone-cracks': cracks(190, 110, 40),
    cut: cut(210, 214, 84, 30),
    'talc-marks': specks(206, 130, 60, 90, 'aluminium'),
  },
  overshoes: {
    'torn-left': cut(180, 180, 30, 40),
    'torn-right': cut(372, 190, 74, 34),
    'ozone-cracks': (
      <g>
        {cracks(220, 160, 40)}
        {cracks(440, 160, 40)}
      </g>
    ),
    'dried-mud': mud(230, 222, 0.9),
  },
  'climbing-irons': {
    'blunt-gaff': gone(142, 194, 26, 26),
    'torn-strap': cut(226, 178, 20, 20),
    'stained-pads': stain(194, 62, 'glaze', 0.7),
  },
  blanket: {
    'wire-hole': hole(330, 140, 6),
    'cut-edge': cut(490, 150, 8, 40),
    'scuffed-face': strokes(260, 120, 70, 9, 26),
  },
  'insulating-platform': {
    cut: cut(320, 126, -20, 60),
    wet: drops(270, 206),
    'worn-ribs': strokes(330, 116, 40, 7, 24),
  },
}
