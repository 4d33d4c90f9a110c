/** Everything handed in is drawn with at most six calls: fill, outline and shadow of solids and of wires; each shares one geometry. */
import { type BufferGeometry, Mesh } from 'three'
import { bakeSolids } from './bakeSolids'
import { bakeWires } from './bakeWires'
import { lasting } from './lasting'
import type { Built } from './part'
import { shadowMaterial, wireShadowMaterial } from './shadowMaterials'
import { hullMaterial, solidMaterial } from './solidMaterials'
import { useMeshes } from './useMeshes'
import { wireHullMaterial, wireMaterial } from './wireMaterials'

const materials = {
  solid: lasting(solidMaterial()),
  hull: lasting(hullMaterial()),
  shadow: lasting(shadowMaterial()),
  wire: lasting(wireMaterial()),
  wireHull: lasting(wireHullMaterial()),
  wireShadow: lasting(wireShadowMaterial()),
}

/** Shadows lie under everything, outlines go on after the fill. */
const order: Readonly<Record<keyof typeof materials, number>> = {
  shadow: 1,
  wireShadow: 1,
  solid: 2,
  wire: 2,
  hull: 3,
  wireHull: 3,
}

interface Props {
  readonly of: Pick<Built, 'parts' | 'wires'>
  readonly hasOutline?: boolean
  readonly hasShadow?: boolean
}

/** Which share the geometry of the solids, and which that of the wires. */
const kindsOf = { parts: ['solid', 'hull', 'shadow'], wires: ['wire', 'wireHull', 'wireShadow'] } as const

function meshOf(geometry: BufferGeometry, kind: keyof typeof materials): Mesh {
  const mesh = new Mesh(geometry, materials[kind])
  mesh.name = kind
  mesh.renderOrder = order[kind]
  mesh.frustumCulled = false
  mesh.matrixAutoUpdate = false
  return mesh
}

export function inkMeshes({ of, hasOutline = true, hasShadow = true }: Props): readonly Mesh[] {
  const isWanted = (kind: keyof typeof materials): boolean =>
    /hull/i.test(kind) ? hasOutline : /shadow/i.test(kind) ? hasShadow : true
  const meshes: Mesh[] = []
  if (of.parts.length > 0) {
    const geometry = bakeSolids(of.parts)
    meshes.push(...kindsOf.parts.filter(isWanted).map((kind) => meshOf(geometry, kind)))
  }
  if (of.wires.length > 0) {
    const geometry = bakeWires(of.wires)
    meshes.push(...kindsOf.wires.filter(isWanted).map((kind) => meshOf(geometry, kind)))
  }
  return meshes
}

export function InkBatch({ of, hasOutline = true, hasShadow = true }: Props) {
  return useMeshes(() => ({ meshes: inkMeshes({ of, hasOutline, hasShadow }) }), [of, hasOutline, hasShadow])
}
