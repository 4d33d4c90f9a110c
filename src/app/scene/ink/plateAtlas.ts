/** Letters on gear in one canvas atlas that is used as a mask, so that their colour stays with the theme. */
import { CanvasTexture, LinearFilter, type Matrix4 } from 'three'

export interface Plate {
  /** Centre and turn of the quad, scene metres. */
  readonly place: Matrix4
  readonly width: number
  readonly height: number
  readonly text: readonly string[]
}

/** Cells of the atlas, four to a row. Pixels. */
const cell = { wide: 256, high: 128 } as const
const columns = 4

const rowsFor = (count: number): number => Math.max(1, Math.ceil(count / columns))

/** Corner of a plate's cell, from the lower left of the atlas, and its size there. */
export function cellOf(index: number, count: number) {
  const rows = rowsFor(count)
  return {
    u: (index % columns) / columns,
    v: (rows - 1 - Math.floor(index / columns)) / rows,
    wide: 1 / columns,
    high: 1 / rows,
  }
}

export function plateAtlas(plates: readonly Plate[]): CanvasTexture {
  const canvas = document.createElement('canvas')
  canvas.width = cell.wide * columns
  canvas.height = cell.high * rowsFor(plates.length)
  const context = canvas.getContext('2d')!
  context.fillStyle = '#000'
  context.fillRect(0, 0, canvas.width, canvas.height)
  context.fillStyle = '#fff'
  context.textAlign = 'center'
  context.textBaseline = 'middle'
  const family = getComputedStyle(document.body).fontFamily || 'sans-serif'
  plates.forEach(({ text }, i) => {
    const size = text.length > 1 ? 46 : 84
    const [x, y] = [(i % columns) * cell.wide, Math.floor(i / columns) * cell.high]
    context.font = `600 ${size}px ${family}`
    text.forEach((line, k) =>
      context.fillText(
        line,
        x + cell.wide / 2,
        y + cell.high / 2 + (k - (text.length - 1) / 2) * size * 1.15,
        cell.wide - 12,
      ),
    )
  })
  const texture = new CanvasTexture(canvas)
  texture.minFilter = LinearFilter
  texture.generateMipmaps = false
  texture.anisotropy = 4
  return texture
}
