/**
 * What the scene's surfaces are coloured with. Materials, paper and pens come from the one table of the look; only what
 * the sheets never draw (cloth, hills, the road) has its colours here. Values are display-space sRGB: shaders write
 * them unconverted, so that the paper in the canvas is the paper of the page.
 */
import { type ColourName, colourOf, pens } from '../../tokens'
import { type Theme, themes } from '../../stores/theme'

/** Light, dark, contrast; a name stands for the colour of the look. */
const surfaces = {
  concrete: 'm-concrete',
  steel: ['#aab1b5', '#69737a', '#f4f4f4'],
  wood: 'm-wood',
  glaze: 'm-glaze',
  copper: 'm-copper',
  aluminium: ['#cfd5d8', '#949da1', '#ffffff'],
  rubber: 'm-rubber',
  fibreglass: ['#e2cc7c', '#bba85e', '#f6e9b0'],
  cloth: ['#66839a', '#4e6b80', '#c3d4e0'],
  clothPale: ['#efebdf', '#c9c4b6', '#ffffff'],
  clothEarth: ['#b79b70', '#7d684a', '#eadfca'],
  clothGreen: ['#8d9c7d', '#5a664f', '#dde6d2'],
  clothDark: ['#4d5d6d', '#384a5a', '#8ea0b0'],
  skin: ['#d3a384', '#a98068', '#e9c8b2'],
  helmet: ['#f9f7f0', '#d8d5ca', '#ffffff'],
  leather: ['#8a684a', '#6b513d', '#b89878'],
  strap: ['#33383d', '#14181b', '#000000'],
  tape: ['#b8523a', '#c9644f', '#b8523a'],
  truck: ['#e9e6dc', '#6e7073', '#ffffff'],
  glass: ['#a9bcc4', '#3a4a52', '#e0e8ec'],
  tyre: ['#4a4d4f', '#17191a', '#4a4d4f'],
  hill: ['#dedbc8', '#26241f', '#f4f4f4'],
  hillFar: ['#e9e5d8', '#23211d', '#fafafa'],
  leaf: ['#b3bd97', '#4d573f', '#f0f0f0'],
  wall: ['#e6dfce', '#55524a', '#ffffff'],
  roof: ['#b98e77', '#5c473d', '#e0e0e0'],
  plate: 'field',
  ink: 'ink',
  rubberDark: ['#3c4246', '#1d2225', '#4a4d4f'],
  lead: ['#bf7440', '#c07a48', '#a85c24'],
  polymer: ['#7d8c8e', '#5d6b6e', '#8a8a8a'],
  white: ['#fbfaf4', '#dedbd0', '#ffffff'],
  canvas: ['#d9d2bb', '#5d584a', '#ffffff'],
  pencil: 'accent',
} as const satisfies Record<string, ColourName | readonly [string, string, string]>

export type Slot = keyof typeof surfaces
/** The order is the palette's index in the vertices. */
export const slots = Object.keys(surfaces) as readonly Slot[]
export const slotIndex = Object.fromEntries(slots.map((slot, index) => [slot, index])) as Record<Slot, number>

const grounds = {
  sky: 'paper',
  skyTop: ['#e3e8e4', '#232a2f', '#ffffff'],
  ground: ['#eee8d8', '#26231d', '#ffffff'],
  road: ['#dfdacd', '#312e29', '#f0f0f0'],
  cross: ['#b9b199', '#524d43', '#9a9a9a'],
  grass: ['#8f9468', '#555f45', '#b5b5b5'],
  shade: ['#949ca6', '#39434d', '#c4c4c4'],
  shadow: ['#55606b', '#0a0d0f', '#707070'],
} as const satisfies Record<string, ColourName | readonly [string, string, string]>

const inTheme = (value: ColourName | readonly [string, string, string], theme: Theme): string =>
  typeof value === 'string' ? colourOf(value, theme) : value[themes.indexOf(theme)]!

export const surfaceColour = (slot: Slot, theme: Theme): string => inTheme(surfaces[slot], theme)
export const groundColour = (name: keyof typeof grounds, theme: Theme): string => inTheme(grounds[name], theme)

/** Tints of the ground potential, low to high: lightness falls without a turn, so the order survives grey print. */
export const rampNames = ['v1', 'v2', 'v3', 'v4', 'v5', 'v6', 'v7', 'v8', 'v9'] as const

/** Pens one size up for the high-contrast sheet. */
export const lineWeight = (theme: Theme): number => (theme === 'contrast' ? pens.edge[2] / pens.edge[0] + 0.2 : 1)

/** How much of the shaded side is washed with the shade colour. */
export const shadeWash = (theme: Theme): number => ({ light: 0.8, dark: 0.75, contrast: 0.85 })[theme]

export function rgbOf(hex: string): [number, number, number] {
  const value = Number.parseInt(hex.slice(1), 16)
  return [(value >> 16) / 255, ((value >> 8) & 255) / 255, (value & 255) / 255]
}
