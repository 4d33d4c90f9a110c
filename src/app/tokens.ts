/**
 * Every value of the look in one table: the sheets read it as CSS variables, the scene as uniforms. Colours per theme:
 * light, dark (a cab at night), contrast (sun on glass, low vision). Ratios in brackets are against paper, in light.
 */
import { type Theme, themes } from './stores/theme'

/** light, dark, contrast */
export const colours = {
  paper: ['#f6f2e8', '#1e1b17', '#ffffff'], // the sheet; warm, so that white can mean "write here"
  field: ['#fcfaf4', '#28251f', '#ffffff'], // where a person writes or reads an instrument; the lightest thing on the sheet
  recess: ['#ece6d8', '#15120e', '#ffffff'], // table heads and what lies outside the work; one step down, never a shadow
  ink: ['#211d18', '#ece7dd', '#000000'], // text and visible edges (15.0)
  'ink-2': ['#524c44', '#bfbaaf', '#000000'], // secondary text (7.6): still AAA, since sun on a tablet eats contrast
  'ink-3': ['#7f786d', '#8c877d', '#000000'], // dimension and extension lines, control outlines (3.9): lines only, never text
  rule: ['#cec6b8', '#46423a', '#000000'], // table rules (1.5): decoration, carries no meaning
  grid: ['#d6cfc1', '#38342d', '#c4c4c4'], // 5 m grid under a plan: must vanish before the wires do
  accent: ['#1e4e93', '#88bcf2', '#00338f'], // what you chose, what you can press (7.3); blue is no gear material and no volt
  'on-accent': ['#fcfaf4', '#15120e', '#ffffff'], // text on the accent (8.0)
  wash: ['#dbe7f3', '#23344a', '#d7e5ff'], // the chosen row; ink on it stays above 12
  live: ['#9d2f19', '#ef8767', '#8a1600'], // treat as live, critical (6.6): iron oxide, darker than any alarm red, calm
  proven: ['#524c44', '#bfbaaf', '#000000'], // proven dead, not yet earthed: no colour, because it still earns no trust
  earthed: ['#046662', '#74c9be', '#00504c'], // earthed (6.1): differs from --live in lightness order and in hue for all three dichromacies
  'm-copper': ['#b5673a', '#a5643c', '#8f4a1e'], // leads and clamps' conducting parts
  'm-aluminium': ['#a9b0b3', '#8f979b', '#ffffff'], // conductors, clamp bodies
  'm-rubber': ['#d98a35', '#a96a2a', '#ffb04d'], // covers, guards, gloves, boots
  'm-wood': ['#b08f62', '#8e7350', '#ffffff'], // poles, arms of wood
  'm-concrete': ['#cdc7b8', '#5f5b52', '#ffffff'], // pole at this site
  'm-steel': ['#7c8489', '#969ea3', '#ffffff'], // arms, bolts, stays, rods
  'm-glaze': ['#7d5743', '#a37a62', '#5a3524'], // insulators
  'm-soil': ['#a08e6c', '#6d6250', '#ffffff'], // cut ground
  'm-water': ['#8fb0bd', '#3f5f6d', '#d7e5ff'], // rivers on locality plans
  'm-leaf': ['#a9b592', '#4d573f', '#ffffff'], // trees on locality plans
  v1: ['#efe8d2', '#2c1f24', '#ffffff'],
  v2: ['#e3cead', '#4a2b38', '#ffffff'],
  v3: ['#d9b38d', '#6a3a44', '#f1e6d6'],
  v4: ['#ce9773', '#87504d', '#e5cdb8'],
  v5: ['#c17b60', '#a36654', '#d9b49d'],
  v6: ['#b16056', '#bb7e59', '#cd9b86'],
  v7: ['#9c4750', '#d09a62', '#bd8273'],
  v8: ['#84324d', '#e2b875', '#ab6a64'],
  v9: ['#691f48', '#f2d98c', '#975357'],
  contour: ['#743527', '#e8b58e', '#4a1208'], // contour lines and their figures (7.8): survey brown, pushed to the ramp's hue
  // at site potential: an earthed conductor that stands at kilovolts; plum of the ramp, so that it never reads as safe
  risen: ['#84324d', '#e2b875', '#5d1038'],
} as const satisfies Record<string, readonly [string, string, string]>

export type ColourName = keyof typeof colours

/** Five pens, pixels; high contrast is one size up. */
export const pens = {
  hair: [0.75, 0.75, 1], // dimensions, extension lines, hatching
  thin: [1, 1, 1.5], // rules, hidden edges, minor contours
  edge: [1.5, 1.5, 2], // visible edges, control outlines
  wire: [2.5, 2.5, 3.5], // conductors, index contours
  heavy: [4, 4, 5], // leads, ground line, the sheet's head rule
} as const satisfies Record<string, readonly [number, number, number]>

/** Two weights; 600 not 700: at 15 px a heavier i loses its dot and 8 closes up. */
const weights = { text: [400, 400, 450], strong: [600, 600, 750] } as const

export const colourOf = (name: ColourName, theme: Theme): string => colours[name][themes.indexOf(theme)]!

/** All of it as CSS variables: `--paper`, `--p-hair`, `--w-text`. */
export function variablesOf(theme: Theme): Readonly<Record<string, string>> {
  const index = themes.indexOf(theme)
  const variables: Record<string, string> = {}
  for (const [name, values] of Object.entries(colours)) variables[`--${name}`] = values[index]!
  for (const [name, values] of Object.entries(pens)) variables[`--p-${name}`] = `${values[index]}px`
  for (const [name, values] of Object.entries(weights)) variables[`--w-${name}`] = String(values[index])
  return variables
}
