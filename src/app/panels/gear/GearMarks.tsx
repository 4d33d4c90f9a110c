/**
 * What a look at an item showed, drawn on it where it is: what is wrong and what only looks wrong, with the same pen, so
 * that the drawing gives no verdict. Keyed by type and by the name of the finding; places are those of GearDrawing.
 */
import type { ReactNode } from 'react'
import { endPlaces } from './LeadDrawings'
import { endMarks, leadMarks } from './LeadMarks'
import { crack, cut, drops, fray, gone, hole, mud, put, specks, stain, strokes, swelling } from './MarkParts'
import { toolMarks } from './ToolMarks'
import { wornMarks } from './WornMarks'

const gloveMarks = {
  'ozone-cracks': (
    <g>
      {[0, 1, 2, 3, 4].map((i) => (
        <g key={i}>{crack(190 + (i % 2) * 18, 110 + i * 16, i * 14, 0.6)}</g>
      ))}
    </g>
  ),
  cut: cut(192, 150, 20, 26),
  swelling: swelling(196, 160, 'rubber', 12),
  'talc-marks': specks(195, 150, 60, 80, 'aluminium'),
}
const marks: Readonly<Record<string, Readonly<Record<string, ReactNode>>>> = {
  ...leadMarks,
  ...toolMarks,
  ...wornMarks,
  'earth-rod': {
    bent: (
      <g>
        {gone(250, 112, 120, 36)}
        <path
          d='M246 120Q312 190 376 120L376 138Q312 210 246 138Z'
          className='d-edge'
          style={{ fill: 'var(--m-copper)' }}
        />
      </g>
    ),
    mushroomed: <path d='M66 104q-26 24 0 50q14 -24 0 -50Z' className='d-edge' style={{ fill: 'var(--m-copper)' }} />,
    'rusty-seat': stain(104, 129, 'glaze', 0.7),
    'no-depth-mark': gone(142, 110, 18, 38),
    'stripped-bolt': strokes(64, 92, 90, 6, 18),
    scratches: strokes(380, 122, 70, 8, 14),
  },
  'rod-driver': {
    'cracked-head': crack(300, 84, 24),
    'splintered-shaft': put(
      300,
      186,
      0,
      <path
        d='M-14 -26L-4 18L4 -22L14 26M-14 4l-12 -16M14 0l13 14'
        style={{ fill: 'none', stroke: 'var(--ink)', strokeWidth: 2.5 }}
      />,
    ),
    'worn-grip': strokes(300, 212, 0, 3, 22),
  },
  'operating-stick': {
    'carbon-track': (
      <path
        d='M120 127l20 -5 16 7 22 -6 18 6 24 -5 20 4'
        style={{ fill: 'none', stroke: 'var(--ink)', strokeWidth: 4 }}
      />
    ),
    dirt: mud(430, 127, 0.9),
    gouge: cut(410, 122, 4, 24),
    'cracked-lug': crack(592, 112, 60, 0.7),
    'fine-scratches': strokes(230, 122, 74, 8, 10),
  },
  'stick-brush': {
    bald: gone(236, 132, 120, 54),
    dusty: specks(300, 108, 250, 30, 'soil'),
  },
  'hv-detector': {
    'cracked-electrode': crack(84, 128, 80, 0.8),
    'worn-print': gone(326, 108, 36, 40),
  },
  'hv-proving-unit': { 'scuffed-case': strokes(300, 182, 60, 8, 18) },
  'lv-proving-unit': { 'scuffed-case': strokes(300, 182, 60, 8, 18) },
  'lv-tester': {
    'bare-leads': fray(196, 226, 20),
    'no-shroud': (
      <g>
        <path d='M104 100l-7 -32M496 100l7 -32' style={{ fill: 'none', stroke: 'var(--m-copper)', strokeWidth: 5 }} />
        {gone(484, 102, 24, 44)}
      </g>
    ),
    'twisted-leads': (
      <path d='M380 222q20 -26 40 0t40 0' style={{ fill: 'none', stroke: 'var(--ink)', strokeWidth: 4 }} />
    ),
  },
  'lv-gloves': gloveMarks,
  'switching-gloves': gloveMarks,
  'work-gloves': {
    'wire-in-palm': (
      <path d='M176 132l34 34M204 128l-10 22' style={{ fill: 'none', stroke: 'var(--m-steel)', strokeWidth: 4 }} />
    ),
    hole: hole(190, 150, 9),
    oil: stain(194, 150, 'glaze', 0.9),
    'rubbed-palm': strokes(194, 132, 10, 6, 30),
  },
  boots: {
    'nail-hole-left': hole(196, 228, 5),
    'nail-hole-right': hole(406, 228, 5),
    'cut-upper': cut(170, 110, 60, 26),
    'cracked-welt': crack(420, 222, 4),
    oil: stain(250, 206, 'glaze', 0.8),
    'wet-lining': drops(386, 30),
    'odd-pair': (
      <g>
        {gone(330, 44, 90, 60)}
        <path d='M420 118c10 30 74 20 82 60' className='d-heavy' />
      </g>
    ),
    'not-in-bag': (
      <g>
        {gone(520, 90, 90, 120)}
        <path d='M520 104h90M540 90v14M590 90v14' className='d-thin' />
      </g>
    ),
    scratch: strokes(178, 130, 70, 5, 22),
    mud: mud(250, 224, 0.9),
  },
  'pole-cover': {
    split: cut(300, 150, 82, 62),
    hole: hole(250, 160, 11),
    'sun-crazed': (
      <g>
        {[0, 1, 2, 3, 4, 5].map((i) => (
          <g key={i}>{crack(220 + (i % 3) * 76, 120 + (i % 2) * 70, i * 33, 0.8)}</g>
        ))}
      </g>
    ),
    wet: drops(300, 160),
    'straps-gone': (
      <g>
        {[80, 130, 180].map((y) => (
          <g key={y}>{gone(396, y - 8, 46, 22)}</g>
        ))}
      </g>
    ),
    'chalk-mark': (
      <path d='M230 150l26 26m0 -26l-26 26' style={{ fill: 'none', stroke: 'var(--field)', strokeWidth: 6 }} />
    ),
    scratch: strokes(340, 140, 66, 5, 30),
  },
  'lv-guard': {
    cut: cut(300, 94, 4, 34),
    'end-open': gone(494, 100, 34, 62),
    faded: <path d='M150 96h300' style={{ fill: 'none', stroke: 'var(--field)', strokeWidth: 12, opacity: 0.6 }} />,
  },
  lock: { scratched: strokes(266, 196, 64, 6, 22) },
  tag: {
    faded: (
      <g>
        {gone(236, 112, 150, 76)}
        <path d='M250 138h40M250 166h26' className='d-hair' />
      </g>
    ),
    creased: <path d='M224 200L396 112' className='d-thin' />,
  },
  'barrier-set': {
    short: gone(424, 40, 90, 200),
    'conductive-chain': (
      <g style={{ fill: 'none', stroke: 'var(--m-steel)', strokeWidth: 4 }}>
        {Array.from({ length: 12 }, (_, i) => (
          <ellipse key={i} cx={134 + i * 20} cy={90 + (i % 2)} rx='11' ry='6' />
        ))}
      </g>
    ),
    'stakes-missing': gone(224, 44, 32, 192),
    'frayed-end': fray(480, 82, 0, 'rubber'),
  },
  'sign-set': {
    'too-few': gone(386, 84, 112, 142),
    'dirty-sign': mud(270, 150, 1.2),
  },
  harness: {
    'broken-stitching': (
      <path d='M322 74l8 14m4 -20l8 14m4 -20l8 14' style={{ fill: 'none', stroke: 'var(--field)', strokeWidth: 3 }} />
    ),
    burn: (
      <path
        d='M240 168c10 -14 24 -6 22 8c-2 16 -26 14 -22 -8Z'
        style={{ fill: 'var(--m-glaze)', stroke: 'var(--ink)' }}
      />
    ),
    stained: stain(430, 160, 'soil', 0.7),
  },
  handline: {
    frayed: fray(334, 160, 90, 'wood'),
    wet: drops(300, 180),
    grey: <path d='M266 110V220' style={{ fill: 'none', stroke: 'var(--m-steel)', strokeWidth: 6, opacity: 0.7 }} />,
  },
  'rescue-kit': {
    'item-missing': gone(330, 150, 66, 66),
    'short-rope': <path d='M206 214q24 -26 48 0' style={{ fill: 'none', stroke: 'var(--m-wood)', strokeWidth: 9 }} />,
    'dusty-bag': specks(300, 214, 190, 26, 'soil'),
  },
  binoculars: {
    misted: (
      <g style={{ fill: 'var(--m-water)', opacity: 0.8 }}>
        <ellipse cx='220' cy='204' rx='44' ry='9' />
        <ellipse cx='350' cy='204' rx='44' ry='9' />
      </g>
    ),
    'strap-worn': fray(285, 96, 0, 'wood'),
  },
  'operator-mat': {
    cut: cut(320, 146, -18, 44),
    muddy: mud(270, 150, 1.5),
  },
  'pin-insulator': {
    chipped: <path d='M338 168l18 -14 16 18 -14 6Z' className='d-edge' style={{ fill: 'var(--field)' }} />,
    cracked: crack(292, 120, 78, 1.3),
    dust: specks(300, 150, 110, 40, 'soil'),
  },
}

/** Insulation that failed under voltage, whatever it is of. */
const burn = (
  <g>
    {stain(320, 150, 'glaze', 1.1)}
    {hole(320, 150, 9)}
  </g>
)

function Mark({ type, finding }: { readonly type: string; readonly finding: string }) {
  const [name = '', end] = finding.split('@')
  const place = end === undefined ? undefined : endPlaces[type]?.[end]
  if (name === 'burnt') return burn
  if (place === undefined) return marks[type]?.[name]
  return <g transform={`translate(${place.x} ${place.y}) scale(${place.size})`}>{endMarks[name]}</g>
}

/** @param seen findings of looks at the item, by `findFinding` */
export const GearMarks = ({ type, seen }: { type: string; seen: readonly string[] }) => (
  <g>
    {seen.map((finding) => (
      <Mark key={finding} type={type} finding={finding} />
    ))}
  </g>
)
