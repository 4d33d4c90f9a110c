/** What is worn, stood on or laid over things, sketched. */
import type { ReactNode } from 'react'
import { fill } from './DrawingParts'

const twice = (apart: number, what: (i: number) => ReactNode): ReactNode =>
  [0, 1].map((i) => (
    <g key={i} transform={`translate(${i * apart} 0)`}>
      {what(i)}
    </g>
  ))

export const wornDrawings: Readonly<Record<string, ReactNode>> = {
  'leather-protectors': (
    <g>
      {twice(190, () => (
        <g>
          <path
            d='M176 200V140C158 130 142 112 138 92C136 80 148 78 154 84L170 98V52C170 40 186 40 186 52V96V42C186 30 204 30 204 42V96V48C204 36 220 36 220 48V100V62C220 52 234 52 234 62V140C234 154 228 164 226 172V200Z'
            className='d-edge'
            style={fill('wood')}
          />
          <path d='M168 200H234L244 236H158Z' className='d-edge' style={fill('wood')} />
          <path d='M176 182H226M186 140V104M204 140V104M220 140V108' className='d-thin' />
        </g>
      ))}
    </g>
  ),
  sleeves: (
    <g>
      {twice(200, () => (
        <g>
          <path d='M150 40C200 20 240 30 262 52L236 228H180L150 40Z' className='d-edge' style={fill('rubber')} />
          <path d='M184 214H234' className='d-thin' />
          <path d='M152 54C190 40 230 46 258 66' className='d-thin' />
          <path d='M150 40L116 30M262 52L290 44' className='d-wire' />
        </g>
      ))}
    </g>
  ),
  overshoes: (
    <g>
      {twice(220, () => (
        <g>
          <path
            d='M130 90H214V150C230 160 286 168 302 190C308 200 306 214 304 220H130C122 180 124 130 130 90Z'
            className='d-edge'
            style={fill('rubber')}
          />
          <path d='M128 220H306V232H128Z' className='d-edge' style={fill('steel')} />
          <path d='M130 104H214M196 104V150' className='d-thin' />
        </g>
      ))}
    </g>
  ),
  'climbing-irons': (
    <g>
      {twice(220, () => (
        <g>
          <path d='M180 30H196V206H240V220H180Z' className='d-edge' style={fill('steel')} />
          <path d='M180 170L150 206L158 210L180 196Z' className='d-edge' style={fill('steel')} />
          <path d='M164 40H226V84H164Z' className='d-edge' style={fill('wood')} />
          <path d='M160 56H250M170 190C170 160 270 160 262 200' className='d-wire' />
        </g>
      ))}
    </g>
  ),
  blanket: (
    <g>
      <path d='M130 60C230 40 410 76 510 56V210C410 230 230 196 130 214Z' className='d-edge' style={fill('rubber')} />
      <path d='M150 78C240 62 400 92 490 76M150 196C240 182 400 210 490 192' className='d-thin' />
      {[
        [146, 74],
        [494, 72],
        [146, 198],
        [494, 196],
      ].map(([cx, cy]) => (
        <circle key={`${cx} ${cy}`} cx={cx} cy={cy} r='7' className='d-edge' style={{ fill: 'var(--paper)' }} />
      ))}
    </g>
  ),
  'insulating-platform': (
    <g>
      <path d='M120 170L230 80H520L430 170Z' className='d-edge' style={fill('rubber')} />
      <path d='M120 170H430V196H120Z' className='d-edge' style={fill('rubber')} />
      <path d='M430 170L520 80V106L430 196Z' className='d-edge' style={fill('rubber')} />
      <path d='M170 162L262 88M230 162L322 88M290 162L382 88M350 162L442 88M400 162L492 88' className='d-thin' />
    </g>
  ),
}
