/**
 * What the scene's surfaces are coloured with, all of it from the one table of the look. Values are display-space sRGB:
 * shaders write them unconverted, so that the paper in the canvas is the paper of the page.
 */
import { type ColourName, colourOf, grounds, pens, surfaces } from '../../tokens'
import { type Theme, themes } from '../../stores/theme'

export type Slot = keyof typeof surfaces
/** The order is the palette's index in the vertices. */
export const slots = Object.keys(surfaces) as readonly Slot[]
export const slotIndex = Object.fromEntries(slots.map((slot, index) => [slot, index])) as Record<Slot, number>

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
