import type { Rod, Soil } from '../../../../src/engine/physics/soil'

export function rod(id: string, x: number, length: number, radius = 0.008, top = 0, y = 0): Rod {
  return { id, kind: 'rod', at: { x, y }, top, length, radius }
}

export function evenSoil(resistivity: number): Soil {
  return { layers: [{ resistivity }] }
}

export function twoLayers(upper: number, thickness: number, lower: number): Soil {
  return { layers: [{ resistivity: upper, thickness }, { resistivity: lower }] }
}
