/** A map of the place, drawn as a surveyor would: river, road, contours, the line and what crosses it. */
const contours = [
  'M330 22C372 14 402 44 396 82C390 118 344 140 306 126C266 112 262 74 284 50C296 36 312 26 330 22Z',
  'M334 42C362 38 380 56 376 80C372 102 342 114 318 106C294 96 292 74 306 60C314 50 324 44 334 42Z',
  'M336 60C350 58 360 68 358 80C354 92 340 96 330 92C318 86 318 76 324 70C328 64 332 60 336 60Z',
  'M0 52C40 44 66 22 78 0',
  'M0 78C58 68 96 40 112 0',
  'M0 104C76 92 128 58 146 0',
]

export function Locality() {
  return (
    <svg
      viewBox='0 0 416 250'
      width='100%'
      role='img'
      aria-label='Map: the line from west to east past the pole, a river, a road and a circuit that crosses'
      className='map'
    >
      <rect width='416' height='250' style={{ fill: 'var(--paper)', stroke: 'var(--ink)', strokeWidth: 3 }} />
      {contours.map((d, i) => (
        <path
          key={d}
          d={d}
          style={{ fill: 'none', stroke: 'var(--contour)', strokeWidth: i % 3 === 0 ? 1.5 : 0.75, opacity: 0.75 }}
        />
      ))}
      {[15, 12].map((width, i) => (
        <path
          key={width}
          d='M0 176C44 186 70 166 84 134C98 100 138 84 168 104C200 126 182 166 160 180C140 194 162 214 190 214C226 216 236 232 238 250'
          style={{ fill: 'none', stroke: i === 0 ? 'var(--ink)' : 'var(--m-water)', strokeWidth: width }}
        />
      ))}
      {[9, 6.5].map((width, i) => (
        <path
          key={width}
          d='M0 224C60 222 120 236 180 214C250 188 330 170 416 150'
          style={{ fill: 'none', stroke: i === 0 ? 'var(--ink)' : 'var(--paper)', strokeWidth: width }}
        />
      ))}
      {[
        [42, 120],
        [58, 132],
        [30, 140],
        [50, 148],
        [290, 208],
        [306, 218],
        [322, 204],
        [310, 232],
      ].map(([x, y]) => (
        <circle
          key={`${x}-${y}`}
          cx={x}
          cy={y}
          r='6'
          style={{ fill: 'var(--m-leaf)', stroke: 'var(--ink)', strokeWidth: 0.75 }}
        />
      ))}
      <path d='M14 156H402' style={{ stroke: 'var(--ink)', strokeWidth: 2.5 }} transform='rotate(-8 208 156)' />
      {[14, 78, 142, 208, 272, 336, 402].map((x, i) => (
        <circle
          key={x}
          cx={x}
          cy={156}
          r={i === 3 ? 7 : 3.6}
          transform='rotate(-8 208 156)'
          style={{
            fill: 'var(--paper)',
            stroke: i === 3 ? 'var(--accent)' : 'var(--ink)',
            strokeWidth: i === 3 ? 3 : 1.5,
          }}
        />
      ))}
      <path d='M262 0L226 250' className='d-live' style={{ strokeWidth: 1.5 }} />
      {[24, 62, 100, 186, 224].map((y) => (
        <path key={y} d={`M${252 - y * 0.144 + 3} ${y - 3}l14 6`} className='d-live' style={{ strokeWidth: 1.5 }} />
      ))}
      <text x='196' y='140' className='t-b halo end'>
        P117
      </text>
      <text x='270' y='20' className='t-live halo'>
        FX, crosses over
      </text>
      <text x='92' y='96' className='t-i halo'>
        the bend
      </text>
      <text x='318' y='84' className='t-c mid'>
        84
      </text>
    </svg>
  )
}
