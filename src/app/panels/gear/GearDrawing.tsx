/** Each type of gear as a surveyor would sketch it, coloured by what it is made of, with what looks at this item showed. */
import type { ReactNode } from 'react'
import { Hatch } from '../drawing/Lines'
import { Cable, fill } from './DrawingParts'
import { GearMarks } from './GearMarks'
import { leadDrawings } from './LeadDrawings'
import { toolDrawings } from './ToolDrawings'
import { wornDrawings } from './WornDrawings'

const glove = (material: string) => (
  <g>
    {[0, 190].map((x) => (
      <path
        key={x}
        transform={`translate(${140 + x} 20)`}
        d='M40 210V120C20 110 4 92 0 70C-2 60 10 56 16 64L34 84V22C34 8 52 8 52 22V74V12C52 -2 70 -2 70 12V74V18C70 4 88 4 88 18V78V34C88 22 104 22 104 34V120C104 136 98 148 94 156V210Z'
        className='d-edge'
        style={fill(material)}
      />
    ))}
  </g>
)

const meter = (
  <g>
    <rect x='240' y='40' width='120' height='170' rx='8' className='d-edge' style={fill('rubber')} />
    <rect x='258' y='58' width='84' height='44' className='d-edge' style={{ fill: 'var(--field)' }} />
    <circle cx='300' cy='140' r='24' className='d-edge' style={{ fill: 'var(--field)' }} />
    <path d='M300 140l14 -16' className='d-wire' />
  </g>
)

const drawings: Readonly<Record<string, ReactNode>> = {
  ...leadDrawings,
  ...toolDrawings,
  ...wornDrawings,
  'earth-rod': (
    <g>
      <path d='M60 120H540L590 129L540 138H60Z' className='d-edge' style={fill('copper')} />
      <path d='M150 114v30M60 112v34' className='d-wire' />
    </g>
  ),
  'rod-driver': (
    <g>
      <rect x='200' y='60' width='200' height='50' className='d-edge' style={fill('steel')} />
      <path d='M285 110h30v130h-30Z' className='d-edge' style={fill('wood')} />
    </g>
  ),
  'operating-stick': (
    <g>
      <rect x='40' y='118' width='270' height='18' className='d-edge' style={fill('rubber')} />
      <rect x='330' y='118' width='220' height='18' className='d-edge' style={fill('rubber')} />
      <path d='M310 114h24v26h-24ZM550 112h22v30h-22Z' className='d-edge' style={fill('aluminium')} />
      <path d='M572 127h18q14 0 14 -14v-12' className='d-heavy' />
      <path d='M70 118v18M90 118v18M200 110v34' className='d-edge' />
    </g>
  ),
  'stick-brush': (
    <g>
      <path d='M150 90h300v40H150Z' className='d-edge' style={fill('wood')} />
      {Array.from({ length: 24 }, (_, i) => (
        <path key={i} d={`M${158 + i * 12} 130v52`} className='d-thin' />
      ))}
      <path d='M285 60h30v30h-30Z' className='d-edge' style={fill('aluminium')} />
    </g>
  ),
  'hv-detector': (
    <g>
      <path d='M110 116h90v24h-90Z' className='d-edge' style={fill('aluminium')} />
      <path d='M60 128h50' className='d-heavy' />
      <path d='M200 90h190a20 20 0 0 1 20 20v36a20 20 0 0 1 -20 20H200Z' className='d-edge' style={fill('rubber')} />
      <circle cx='250' cy='128' r='13' className='d-edge' style={{ fill: 'var(--field)' }} />
      <circle cx='300' cy='128' r='7' className='d-edge' style={{ fill: 'var(--paper)' }} />
      <path d='M330 112v32M342 112v32M354 112v32' className='d-edge' />
      <path d='M410 118h120v20H410Z' className='d-edge' style={fill('steel')} />
    </g>
  ),
  'hv-proving-unit': meter,
  'lv-proving-unit': meter,
  'lv-tester': (
    <g>
      {meter}
      <Cable d='M270 208C250 250 170 240 120 160' material='rubber' width={8} />
      <Cable d='M330 208C350 250 430 240 480 160' material='rubber' width={8} />
      <path d='M118 160l-14 -60M482 160l14 -60' className='d-heavy' />
    </g>
  ),
  'lv-gloves': glove('rubber'),
  'switching-gloves': glove('rubber'),
  'work-gloves': glove('wood'),
  boots: (
    <g>
      {[0, 210].map((x) => (
        <g key={x} transform={`translate(${120 + x} 20)`}>
          <path
            d='M20 0H90V130C96 152 150 158 164 178C170 188 168 196 166 200H20C12 150 16 80 20 0Z'
            className='d-edge'
            style={fill('rubber')}
          />
          <path
            d='M18 200H168V214H18ZM34 214v8M56 214v8M78 214v8M100 214v8M122 214v8M144 214v8'
            className='d-edge'
            style={{ fill: 'var(--m-steel)' }}
          />
          <path d='M20 14H90' className='d-thin' />
        </g>
      ))}
    </g>
  ),
  'pole-cover': (
    <g>
      <path d='M170 40C170 20 430 20 430 40V220C430 240 170 240 170 220Z' className='d-edge' style={fill('rubber')} />
      <path d='M170 40C170 60 430 60 430 40' className='d-edge' style={{ fill: 'none' }} />
      {[80, 130, 180].map((y) => (
        <path key={y} d={`M166 ${y}C166 ${y + 22} 434 ${y + 22} 434 ${y}`} className='d-wire' />
      ))}
      <path d='M408 54V230' className='d-thin' />
    </g>
  ),
  'lv-guard': (
    <g>
      <path
        d='M80 100C80 70 520 70 520 100V160H500V110C500 100 100 100 100 110V160H80Z'
        className='d-edge'
        style={fill('rubber')}
      />
      <path d='M60 132H540' className='d-wire' />
      <path d='M130 84v74M470 84v74' className='d-thin' />
    </g>
  ),
  lock: (
    <g>
      <path d='M262 120V84C262 40 338 40 338 84V120' style={{ fill: 'none', stroke: 'var(--ink)', strokeWidth: 16 }} />
      <path
        d='M262 120V84C262 40 338 40 338 84V120'
        style={{ fill: 'none', stroke: 'var(--m-steel)', strokeWidth: 11 }}
      />
      <rect x='236' y='116' width='128' height='104' className='d-edge' style={fill('copper')} />
      <path d='M300 150v30' className='d-heavy' />
    </g>
  ),
  tag: (
    <g>
      <path d='M220 60H360L400 100V220H220Z' className='d-edge' style={{ fill: 'var(--field)' }} />
      <circle cx='362' cy='96' r='8' className='d-edge' style={{ fill: 'var(--paper)' }} />
      <path d='M240 120H370M240 150H380M240 180H380' className='d-hair' />
      <path d='M362 88C372 50 420 40 440 60' className='d-edge' />
    </g>
  ),
  'barrier-set': (
    <g>
      {[120, 240, 360, 480].map((x) => (
        <path key={x} d={`M${x} 50v180M${x - 14} 230h28`} className='d-heavy' />
      ))}
      <path
        d='M120 80C160 96 200 96 240 80S320 96 360 80S440 96 480 80M120 140C160 156 200 156 240 140S320 156 360 140S440 156 480 140'
        style={{ fill: 'none', stroke: 'var(--m-rubber)', strokeWidth: 7 }}
      />
    </g>
  ),
  'sign-set': (
    <g>
      <path d='M200 200L270 60L340 200Z' className='d-wire' style={{ fill: 'var(--field)' }} />
      <path d='M270 104v44M270 164v10' className='d-heavy' />
      <path d='M400 220L430 90H450L480 220Z' className='d-edge' style={fill('rubber')} />
      <path d='M390 220h100M418 150h46' className='d-wire' />
    </g>
  ),
  harness: (
    <g style={{ fill: 'none', stroke: 'var(--ink)', strokeWidth: 11 }}>
      <path d='M230 30L300 110L370 30M300 110V150M220 150H380M240 150C230 220 290 230 296 160M360 150C370 220 310 230 304 160' />
      <circle cx='300' cy='110' r='12' style={{ strokeWidth: 4, fill: 'var(--field)' }} />
      <path d='M380 150C460 150 500 200 440 220' style={{ stroke: 'var(--m-wood)' }} />
    </g>
  ),
  handline: (
    <g>
      <circle cx='300' cy='70' r='34' className='d-edge' style={fill('aluminium')} />
      <circle cx='300' cy='70' r='10' className='d-edge' style={{ fill: 'var(--paper)' }} />
      <Cable d='M266 74V230M334 74V190C334 230 420 230 400 200' material='wood' width={9} />
    </g>
  ),
  'rescue-kit': (
    <g>
      <rect x='190' y='90' width='220' height='140' className='d-edge' style={fill('rubber')} />
      <path d='M250 90V66H350V90' className='d-wire' />
      <path d='M300 122v76M262 160h76' style={{ stroke: 'var(--field)', strokeWidth: 18 }} />
    </g>
  ),
  binoculars: (
    <g>
      {[0, 130].map((x) => (
        <path
          key={x}
          transform={`translate(${x} 0)`}
          d='M190 70H250V130L270 210H170L190 130Z'
          className='d-edge'
          style={fill('steel')}
        />
      ))}
      <path d='M250 100H320V140H250Z' className='d-edge' style={fill('aluminium')} />
    </g>
  ),
  'operator-mat': (
    <g>
      <path d='M140 190L240 90H500L420 190Z' className='d-edge' style={fill('rubber')} />
      <path d='M180 176L250 104M230 176L300 104M280 176L350 104M330 176L400 104M380 176L450 104' className='d-thin' />
      <Cable d='M420 186C470 220 520 200 540 150' material='copper' width={8} />
    </g>
  ),
  'pin-insulator': (
    <g>
      <path d='M292 170h16v70h-16Z' className='d-edge' style={fill('steel')} />
      <path
        d='M230 170C230 130 260 128 270 110C250 104 250 84 270 80V60C270 40 330 40 330 60V80C350 84 350 104 330 110C340 128 370 130 370 170C350 182 250 182 230 170Z'
        className='d-edge'
        style={fill('glaze')}
      />
      <path d='M270 80H330' className='d-wire' />
    </g>
  ),
}

interface GearDrawingProps {
  readonly type: string
  readonly name: string
  /** What looks at this item told, by `findFinding`; nothing of it shows before. */
  readonly seen: readonly string[]
}

export function GearDrawing({ type, name, seen }: GearDrawingProps) {
  return (
    <svg viewBox='0 0 640 260' width='100%' role='img' aria-label={name} className='geardrawing'>
      <defs>
        <Hatch id='gearShade' />
      </defs>
      {drawings[type] ?? (
        <rect x='220' y='70' width='200' height='120' className='d-edge' style={{ fill: 'var(--field)' }} />
      )}
      <GearMarks type={type} seen={seen} />
      <path d='M0 252H640' className='d-grid' />
    </svg>
  )
}
