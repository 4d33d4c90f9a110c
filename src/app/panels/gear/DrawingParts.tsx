/** What several sketches of gear are put together from: material, cable, screw clamp. */

export const fill = (material: string) => ({ fill: `var(--m-${material})` })

/** A cable or rope: ink outside, material inside. */
export function Cable({ d, material, width = 18 }: { d: string; material: string; width?: number }) {
  return (
    <g style={{ fill: 'none', strokeLinecap: 'round' }}>
      <path d={d} style={{ stroke: 'var(--ink)', strokeWidth: width }} />
      <path d={d} style={{ stroke: `var(--m-${material})`, strokeWidth: width - 3 }} />
    </g>
  )
}

/** Screw clamp with hook, jaw, eye screw and the ferrule of its cable; 100 wide, 156 high at full size. */
export function Clamp({ x, y, size = 1 }: { x: number; y: number; size?: number }) {
  return (
    <g transform={`translate(${x} ${y}) scale(${size})`}>
      <path
        d='M0 100V42C0 18 18 4 40 4C64 4 80 20 80 42V54H60V46C60 34 54 26 42 26C28 26 22 34 22 46V82H78V108H10C4 108 0 104 0 100Z'
        className='d-edge'
        style={fill('aluminium')}
      />
      <path d='M78 88h24v13h-24Z' className='d-edge' style={fill('copper')} />
      <path
        d='M29 56L35 44L42 50L49 44L55 56V62H29ZM38 62h8V82H38ZM38 108h8V134H38Z'
        className='d-edge'
        style={fill('steel')}
      />
      <circle cx='42' cy='146' r='10' style={{ fill: 'none', stroke: 'var(--ink)', strokeWidth: 7 }} />
      <circle cx='42' cy='146' r='10' style={{ fill: 'none', stroke: 'var(--m-steel)', strokeWidth: 4 }} />
    </g>
  )
}
