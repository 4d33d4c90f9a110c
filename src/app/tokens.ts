/**
 * Every value of the look in one table: the sheets read it as CSS variables, the scene as uniforms. Colours per theme:
 * light, dark (a cab at night), contrast (sun on glass, low vision); and paper. Ratios in brackets are against paper, in light.
 */
import { type Theme, themes } from './stores/theme'

/** light, dark, contrast */
export const colours = {
  paper: ['#f6f2e8', '#1e1b17', '#ffffff'], // the sheet; warm, so that white can mean "write here"
  field: ['#fcfaf4', '#28251f', '#ffffff'], // where a person writes or reads an instrument; the lightest thing on the sheet
  recess: ['#ece6d8', '#15120e', '#ffffff'], // table heads and what lies outside the work; one step down, never a shadow
  veil: ['#000000', '#000000', '#000000'], // over the sheet behind a slip that must be answered; laid on thin
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

/** What only the scene draws: its surfaces. Light, dark, contrast; a name stands for a colour of the sheets. */
export const surfaces = {
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
  wear: ['#b3ab98', '#4a463e', '#d8d8d8'],
  grain: ['#8a6c45', '#6b5537', '#c9c9c9'],
  pencil: 'accent',
} as const satisfies Record<string, ColourName | readonly [string, string, string]>

/** Sky, ground and what lies on it. */
export const grounds = {
  sky: 'paper',
  skyTop: ['#e3e8e4', '#232a2f', '#ffffff'],
  ground: ['#eee8d8', '#26231d', '#ffffff'],
  road: ['#dfdacd', '#312e29', '#f0f0f0'],
  cross: ['#b9b199', '#524d43', '#9a9a9a'],
  grass: ['#8f9468', '#555f45', '#b5b5b5'],
  shade: ['#949ca6', '#39434d', '#c4c4c4'],
  shadow: ['#55606b', '#0a0d0f', '#707070'],
  duskSky: ['#eed9c3', '#33261f', '#ffffff'],
  duskSkyTop: ['#a9b0c2', '#10151d', '#e4e4e4'],
  duskGround: ['#cdc6bd', '#1a1815', '#ffffff'],
  duskRoad: ['#b9b4b0', '#232120', '#ececec'],
  duskTint: ['#cfccd8', '#bdbcc8', '#ffffff'], // multiplies every surface
} as const satisfies Record<string, ColourName | readonly [string, string, string]>

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

/** What a printer is given, whatever is on the screen: the light sheet on white, with no toner for its ground. */
export function variablesOnPaper(): Readonly<Record<string, string>> {
  const white = colourOf('paper', 'contrast')
  return { ...variablesOf('light'), '--paper': white, '--field': white }
}

/** All of it as CSS variables: `--paper`, `--p-hair`, `--w-text`. */
export function variablesOf(theme: Theme): Readonly<Record<string, string>> {
  const index = themes.indexOf(theme)
  const variables: Record<string, string> = {}
  for (const [name, values] of Object.entries(colours)) variables[`--${name}`] = values[index]!
  for (const [name, values] of Object.entries(pens)) variables[`--p-${name}`] = `${values[index]}px`
  for (const [name, values] of Object.entries(weights)) variables[`--w-${name}`] = String(values[index])
  return variables
}
