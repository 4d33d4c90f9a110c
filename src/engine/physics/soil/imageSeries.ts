/**
 * The image series Σ Kⁿ f(2nh), n from 1, as a short list of distances 2nh and strengths. The first images stand as
 * they are; further out f and Kⁿ change slowly with n, so whole blocks of images are replaced by four Gauss points each
 * (for K < 0, where signs alternate, by four pairs of neighbours). A contrast of 1000 to 1 needs 7000 images or 80
 * entries; the whole surface potential differs by less than 1e-4.
 */
import { ln, pow } from '../../math/portable'
import { GAUSS } from './gauss'

export interface ImageSeries {
  /** 2nh, metre. */
  readonly shift: Float64Array
  readonly strength: Float64Array
}

interface Image {
  readonly n: number
  readonly strength: number
}

const NO_IMAGES: ImageSeries = { shift: new Float64Array(0), strength: new Float64Array(0) }

/** Images weaker than this are left out. */
const NEGLIGIBLE = 1e-7

/** So many images stand as they are. */
const PLAIN = 32

/** Each block reaches this many times as far as the one before it. */
const GROWTH = 1.6

export function imageSeries(reflection: number, boundary: number): ImageSeries {
  if (reflection === 0) return NO_IMAGES
  const ratio = Math.abs(reflection)
  const last = Math.ceil(ln(NEGLIGIBLE) / ln(ratio))
  const images: Image[] = []
  let strength = 1
  for (let n = 1; n <= Math.min(last, PLAIN); n++) {
    strength *= reflection
    images.push({ n, strength })
  }
  if (last > PLAIN) images.push(...(reflection > 0 ? likeBlocks(ratio, last) : alternatingBlocks(ratio, last)))
  return {
    shift: Float64Array.from(images, (image) => 2 * image.n * boundary),
    strength: Float64Array.from(images, (image) => image.strength),
  }
}

/**
 * Σ g(m) over whole m from `from` becomes ∫ g from `from` - ½ on, in Gauss points, plus the end correction of the
 * midpoint rule, g'/24 at its lower end, from the two neighbours of that end.
 */
function slowSum(from: number, end: number): { readonly m: number; readonly weight: number }[] {
  const points = [
    { m: from, weight: 1 / 24 },
    { m: from - 1, weight: -1 / 24 },
  ]
  for (let start = from - 0.5; start < end; start *= GROWTH) {
    const width = start * (GROWTH - 1)
    for (const [at, weight] of GAUSS) points.push({ m: start + at * width, weight: weight * width })
  }
  return points
}

function likeBlocks(ratio: number, last: number): Image[] {
  return slowSum(PLAIN + 1, last).map(({ m, weight }) => ({ n: m, strength: weight * pow(ratio, m) }))
}

/** PLAIN is even, so pair m is the odd image 2m + 1 (negative) and the even one after it. */
function alternatingBlocks(ratio: number, last: number): Image[] {
  return slowSum(PLAIN / 2, last / 2).flatMap(({ m, weight }) => {
    const n = 2 * m + 1
    const size = weight * pow(ratio, n)
    return [
      { n, strength: -size },
      { n: n + 1, strength: size * ratio },
    ]
  })
}
