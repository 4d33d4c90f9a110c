/** Letters on gear in one canvas atlas that is used as a mask, so that their colour stays with the theme. */
import { CanvasTexture, LinearFilter, type Matrix4 } from 'three'

export interface Plate {
  /** Centre and turn of the quad, scene metres. */
  readonly place: Matrix4
  readonly width: number
  readonly height: number
  readonly text: readonly string[]
}

const row = 256

export function plateAtlas(plates: readonly Plate[]): CanvasTexture {
  const canvas = document.createElement('canvas')
  canvas.width = 512
  canvas.height = row * Math.max(1, plates.length)
  const context = canvas.getContext('2d')!
  context.fillStyle = '#000'
  context.fillRect(0, 0, canvas.width, canvas.height)
  context.fillStyle = '#fff'
  context.textAlign = 'center'
  context.textBaseline = 'middle'
  const family = getComputedStyle(document.body).fontFamily || 'sans-serif'
  plates.forEach(({ text }, i) => {
    const size = text.length > 1 ? 70 : 150
    context.font = `600 ${size}px ${family}`
    text.forEach((line, k) =>
      context.fillText(line, 256, row * i + row / 2 + (k - (text.length - 1) / 2) * size * 1.15),
    )
  })
  const texture = new CanvasTexture(canvas)
  texture.minFilter = LinearFilter
  texture.generateMipmaps = false
  texture.anisotropy = 4
  return texture
}
