/**
 * Bare overhead conductors by their construction: so many wires of such a diameter, for the steel-cored ones a core of
 * its own. From it follow radius, resistance and geometric mean radius:
 *   R20 = k ρ20 / A1, A1 the section of one wire, k the published resistance constant of the stranding (IEC 61089 annex,
 *   EN 50182 annex D, from memory: (1 + lay)/wires); ρ20 of hard-drawn wire: aluminium 28.264 nΩ·m (IEC 60889), copper
 *   17.86 nΩ·m; both from memory, high confidence.
 *   GMR: the geometric mean of all distances between the wires of the conducting layers, e^-¼ r for a wire to itself.
 *   Skin effect: IEC 60287-1-1, below half a per cent for all of these at 50 Hz.
 * Steel carries nothing. One layer of aluminium magnetises its core when much current flows (6/1: published GMR at full
 * load 0.3 to 0.4 of the radius against 0.77 here, up to 0.06 Ω/km of reactance more): not modelled. Stranded wires lie
 * on circles; lay is in the resistance only.
 */
import { cos, exp, ln, PI } from '../../math/portable'
import { invariant } from '../../units/invariant'

export type ConductorMetal = 'aluminium' | 'copper' | 'aluminium-steel'

interface Layer {
  readonly wires: number
  /** Metre, from the axis to the middle of its wires. */
  readonly radius: number
}

/** Millimetres, as the tables print them. */
interface Construction {
  readonly metal: ConductorMetal
  readonly wires: number
  readonly wireMm: number
  /** Steel: so many of such a diameter in the middle. */
  readonly core?: readonly [wires: number, mm: number]
}

const constructions = {
  'copper-16': { metal: 'copper', wires: 7, wireMm: 1.7 },
  'copper-25': { metal: 'copper', wires: 7, wireMm: 2.1 },
  'copper-35': { metal: 'copper', wires: 7, wireMm: 2.5 },
  'copper-50': { metal: 'copper', wires: 7, wireMm: 3 },
  'copper-70': { metal: 'copper', wires: 19, wireMm: 2.1 },
  'copper-95': { metal: 'copper', wires: 19, wireMm: 2.5 },
  'aluminium-25': { metal: 'aluminium', wires: 7, wireMm: 2.1 },
  'aluminium-50': { metal: 'aluminium', wires: 7, wireMm: 3 },
  'aluminium-70': { metal: 'aluminium', wires: 19, wireMm: 2.1 },
  'aluminium-95': { metal: 'aluminium', wires: 19, wireMm: 2.5 },
  'aluminium-120': { metal: 'aluminium', wires: 19, wireMm: 2.8 },
  'aluminium-steel-35-6': { metal: 'aluminium-steel', wires: 6, wireMm: 2.7, core: [1, 2.7] },
  'aluminium-steel-50-8': { metal: 'aluminium-steel', wires: 6, wireMm: 3.2, core: [1, 3.2] },
  'aluminium-steel-70-12': { metal: 'aluminium-steel', wires: 26, wireMm: 1.85, core: [7, 1.44] },
  'aluminium-steel-95-15': { metal: 'aluminium-steel', wires: 26, wireMm: 2.15, core: [7, 1.67] },
  'aluminium-steel-120-20': { metal: 'aluminium-steel', wires: 26, wireMm: 2.44, core: [7, 1.9] },
  'aluminium-steel-185-30': { metal: 'aluminium-steel', wires: 26, wireMm: 3, core: [7, 2.33] },
} as const satisfies Readonly<Record<string, Construction>>

export type ConductorType = keyof typeof constructions

export const conductorTypes = Object.keys(constructions).sort() as readonly ConductorType[]

export interface ConductorValues {
  readonly metal: ConductorMetal
  /** m² that conducts. */
  readonly area: number
  /** Metre, outside. */
  readonly radius: number
  readonly gmr: number
  /** Ohm per metre at 20 °C, direct current. */
  readonly resistance20: number
}

export function conductorValues(type: ConductorType): ConductorValues {
  return valuesOf(constructions[type])
}

/** Ohm·metre at 20 °C and its rise per kelvin (IEC 60889, IEC 60028; from memory). */
const metals = {
  aluminium: { resistivity: 28.264e-9, perKelvin: 0.00403 },
  copper: { resistivity: 17.86e-9, perKelvin: 0.00381 },
} as const

/** Resistance constants of IEC 61089 and EN 50182: resistance of the strand per resistance of one wire. */
const strandConstant: Readonly<Record<number, number>> = { 6: 0.1692, 7: 0.1447, 19: 0.05357, 26: 0.03928 }

function valuesOf({ metal, wires, wireMm, core }: Construction): ConductorValues {
  const diameter = wireMm / 1000
  const section = (PI * diameter * diameter) / 4
  const constant = strandConstant[wires]
  invariant(constant !== undefined, 'a stranding with a published constant', wires)
  const { resistivity } = metalOf(metal)
  const layers = layersOf(wires, diameter, core)
  return {
    metal,
    area: wires * section,
    radius: layers[layers.length - 1]!.radius + diameter / 2,
    gmr: gmrOf(layers, diameter),
    resistance20: (constant * resistivity) / section,
  }
}

function metalOf(metal: ConductorMetal): (typeof metals)['copper' | 'aluminium'] {
  return metal === 'copper' ? metals.copper : metals.aluminium
}

/** Ohm per metre, alternating current. @param frequency hertz; @param temperature °C */
export function acResistance(type: ConductorType, frequency: number, temperature: number): number {
  const { metal, resistance20 } = conductorValues(type)
  const direct = resistance20 * (1 + metalOf(metal).perKelvin * (temperature - 20))
  const square = (8e-7 * PI * frequency) / direct
  return direct * (1 + (square * square) / (192 + 0.8 * square * square))
}

/** Six more wires in each layer than in the one below it; over a core as many as fill the circles (10 and 16 of 26). */
function layersOf(wires: number, diameter: number, core: Construction['core']): readonly Layer[] {
  if (core === undefined) {
    const full = [1, 6, 12].map((count, layer) => ({ wires: count, radius: layer * diameter }))
    return full.slice(0, wires === 7 ? 2 : 3)
  }
  const [count, coreMm] = core
  const inside = ((count === 1 ? 0.5 : 1.5) * coreMm) / 1000
  const first = inside + diameter / 2
  if (wires === 6) return [{ wires, radius: first }]
  return [
    { wires: 10, radius: first },
    { wires: 16, radius: first + diameter },
  ]
}

/** Natural logarithms of all distances, averaged. */
function gmrOf(layers: readonly Layer[], diameter: number): number {
  const wires = layers.flatMap((layer, ring) =>
    Array.from({ length: layer.wires }, (_, i) => ({ ring, radius: layer.radius, turn: (2 * PI * i) / layer.wires })),
  )
  let sum = 0
  wires.forEach((a, i) => {
    wires.forEach((b, j) => {
      // r² + s² - 2rs cos: squares, hence the half
      const square = a.radius * a.radius + b.radius * b.radius - 2 * a.radius * b.radius * cos(a.turn - b.turn)
      sum += i === j ? ln(diameter / 2) - 0.25 : 0.5 * ln(square)
    })
  })
  return exp(sum / (wires.length * wires.length))
}
