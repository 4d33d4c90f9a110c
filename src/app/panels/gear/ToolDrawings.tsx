/** Tools, testers, papers and what comes with the truck, sketched. */
import type { ReactNode } from 'react'
import { Cable, fill } from './DrawingParts'

const field = { fill: 'var(--field)' }

const lampHead = (x: number) => (
  <g key={x}>
    <path d={`M${x} 170h60v60h-60Z`} className='d-edge' style={fill('rubber')} />
    <circle cx={x + 30} cy='146' r='26' className='d-edge' style={field} />
  </g>
)

export const toolDrawings: Readonly<Record<string, ReactNode>> = {
  'carrier-bag': (
    <g>
      <path d='M190 80H450L470 230H170Z' className='d-edge' style={fill('rubber')} />
      <path d='M190 80C230 60 410 60 450 80' className='d-wire' />
      <path d='M200 104H440' className='d-thin' />
      <rect x='300' y='94' width='40' height='34' className='d-edge' style={fill('copper')} />
      <path d='M308 94V82C308 68 332 68 332 82V94' className='d-wire' />
    </g>
  ),
  'earth-tester': (
    <g>
      <rect x='210' y='50' width='180' height='150' rx='8' className='d-edge' style={fill('rubber')} />
      <rect x='232' y='68' width='136' height='50' className='d-edge' style={field} />
      <circle cx='262' cy='156' r='20' className='d-edge' style={field} />
      <path d='M262 156l10 -14' className='d-wire' />
      {[308, 334, 360].map((x) => (
        <circle key={x} cx={x} cy='164' r='8' className='d-edge' style={fill('copper')} />
      ))}
      <Cable d='M308 164C300 240 160 240 110 170' material='rubber' width={7} />
      <Cable d='M360 164C380 240 470 240 520 170' material='rubber' width={7} />
      <path d='M110 170l-12 -50M520 170l12 -50' className='d-heavy' />
    </g>
  ),
  'cabinet-key': (
    <g>
      <path d='M250 118H470V138H250Z' className='d-edge' style={fill('steel')} />
      <circle cx='216' cy='128' r='44' className='d-edge' style={fill('steel')} />
      <circle cx='216' cy='128' r='22' className='d-edge' style={{ fill: 'var(--paper)' }} />
      <path d='M436 138h34v30h-12v-12h-10v12h-12Z' className='d-edge' style={fill('steel')} />
    </g>
  ),
  lamp: (
    <g>
      <path d='M160 100H400V160H160Z' className='d-edge' style={fill('rubber')} />
      <path d='M400 92L460 70V190L400 168Z' className='d-edge' style={fill('aluminium')} />
      <path d='M460 70H474V190H460Z' className='d-edge' style={field} />
      <circle cx='260' cy='114' r='9' className='d-edge' style={field} />
    </g>
  ),
  'wire-brush': (
    <g>
      <path d='M120 96H430L520 84V112L430 124H120Z' className='d-edge' style={fill('wood')} />
      {Array.from({ length: 26 }, (_, i) => (
        <path key={i} d={`M${134 + i * 11} 124v44`} className='d-thin' />
      ))}
    </g>
  ),
  'tool-bag': (
    <g>
      <path d='M210 100H430L446 230H194Z' className='d-edge' style={fill('rubber')} />
      <path d='M240 100C240 50 400 50 400 100' className='d-wire' />
      <path d='M270 100V60h20v40M340 100l14 -52 16 4 -10 48' className='d-edge' style={fill('steel')} />
      <path d='M446 120C520 120 540 160 500 190' className='d-wire' />
      <circle cx='496' cy='194' r='10' className='d-edge' style={field} />
    </g>
  ),
  radio: (
    <g>
      <rect x='260' y='80' width='100' height='160' rx='10' className='d-edge' style={fill('rubber')} />
      <path d='M280 80V20H292V80Z' className='d-edge' style={fill('steel')} />
      <rect x='276' y='98' width='68' height='30' className='d-edge' style={field} />
      <path d='M280 150h60M280 164h60M280 178h60M280 192h60' className='d-thin' />
      <rect x='250' y='120' width='10' height='50' className='d-edge' style={fill('steel')} />
    </g>
  ),
  'first-aid-kit': (
    <g>
      <rect x='170' y='80' width='180' height='150' className='d-edge' style={fill('leaf')} />
      <path d='M210 80V60H310V80' className='d-wire' />
      <path d='M260 120v70M225 155h70' style={{ stroke: 'var(--field)', strokeWidth: 18 }} />
      <rect x='380' y='110' width='110' height='120' rx='8' className='d-edge' style={fill('rubber')} />
      <path d='M446 128l-26 44h22l-10 36 30 -48h-22l10 -32Z' className='d-edge' style={field} />
      <circle cx='476' cy='124' r='5' className='d-edge' style={fill('leaf')} />
    </g>
  ),
  'job-papers': (
    <g>
      <path d='M190 40H450V230H190Z' className='d-edge' style={fill('wood')} />
      <path d='M206 54H434V220H206Z' className='d-edge' style={field} />
      <path d='M290 34h60v20h-60Z' className='d-edge' style={fill('steel')} />
      {[84, 104, 124, 144, 164, 184].map((y) => (
        <path key={y} d={`M222 ${y}H418`} className='d-hair' />
      ))}
      <path d='M222 204h60M340 204h78' className='d-thin' />
    </g>
  ),
  'cone-set': (
    <g>
      {[0, 26, 52].map((x) => (
        <g key={x} transform={`translate(${x} 0)`}>
          <path d='M150 220L184 70H204L238 220Z' className='d-edge' style={fill('rubber')} />
          <path d='M136 220h116M170 140h48' className='d-wire' />
        </g>
      ))}
      {lampHead(380)}
      {lampHead(470)}
    </g>
  ),
  'bucket-boom': (
    <g>
      <path d='M60 220H220V170H60Z' className='d-edge' style={fill('steel')} />
      <path d='M120 170L250 60L266 78L150 178Z' className='d-edge' style={fill('aluminium')} />
      <path d='M256 60L470 110L466 130L250 80Z' className='d-edge' style={fill('rubber')} />
      <path d='M456 100H560V220H456Z' className='d-edge' style={fill('rubber')} />
      <path d='M466 108H550V212H466Z' className='d-edge' style={field} />
      <circle cx='92' cy='196' r='16' className='d-edge' style={fill('copper')} />
      <path d='M170 182h30v26h-30ZM178 190h4M190 190h4M178 200h4M190 200h4' className='d-edge' style={field} />
    </g>
  ),
}
