/** What a look at tools, testers and papers showed, with the same pens as all findings. */
import type { ReactNode } from 'react'
import { crack, cut, fray, gone, mud, specks, stain, strokes } from './MarkParts'

export const toolMarks: Readonly<Record<string, Readonly<Record<string, ReactNode>>>> = {
  'carrier-bag': {
    torn: cut(250, 190, 70, 40),
    'lock-missing': gone(294, 62, 52, 70),
    dusty: specks(320, 200, 200, 40, 'soil'),
  },
  'earth-tester': {
    'broken-lead': fray(300, 196, 70, 'rubber'),
    'taped-case': <path d='M210 126H390' style={{ stroke: 'var(--m-steel)', strokeWidth: 14 }} />,
  },
  'cabinet-key': { 'bent-bit': crack(452, 156, 60, 0.8), rubbed: strokes(216, 92, 10, 6, 14) },
  lamp: { 'broken-glass': crack(467, 130, 80, 1.8), 'scratched-glass': strokes(467, 110, 20, 4, 26) },
  'wire-brush': { bald: gone(200, 126, 150, 46), 'rust-dust': specks(280, 146, 270, 30, 'glaze') },
  'tool-bag': { 'torn-bottom': cut(320, 224, 2, 60), 'oil-stain': stain(270, 170, 'glaze', 0.9) },
  radio: {
    'worn-case': (
      <g>
        {strokes(346, 216, 64, 6, 16)}
        <path d='M260 210H360' style={{ stroke: 'var(--m-steel)', strokeWidth: 10 }} />
      </g>
    ),
  },
  'first-aid-kit': { 'seal-broken': gone(206, 72, 110, 24), 'muddy-case': mud(220, 216, 0.9) },
  'job-papers': {
    'page-missing': <path d='M210 60l12 14 -8 18 12 20 -10 20 10 22 -8 22 8 20' className='d-wire' />,
    'coffee-ring': (
      <circle
        cx='380'
        cy='110'
        r='30'
        style={{ fill: 'none', stroke: 'var(--m-wood)', strokeWidth: 6, opacity: 0.7 }}
      />
    ),
  },
  'cone-set': { 'too-few': gone(440, 112, 110, 126), 'scuffed-cones': strokes(256, 180, 60, 8, 16) },
  'bucket-boom': {
    'liner-crack': crack(508, 170, 84, 1.6),
    'dirty-boom': stain(360, 96, 'soil', 1.2),
    'corroded-reel': stain(92, 196, 'glaze', 0.6),
    'scratched-liner': strokes(500, 150, 70, 6, 22),
  },
}
