/**
 * Materials that all pictures share. Each of them remembers every renderer that has drawn with it: a picture that goes
 * must be let go here, or its renderer, canvas and context stay for as long as the page does.
 */
import type { Material } from 'three'

const materials: Material[] = []

export function lasting<Kind extends Material>(material: Kind): Kind {
  materials.push(material)
  return material
}

/** They can be drawn with again afterwards. */
export const letGo = (): void => materials.forEach((material) => material.dispose())
