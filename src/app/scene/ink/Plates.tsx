/** Lettered plates: one quad each, one atlas, one call. */
import { BufferAttribute, BufferGeometry, Mesh, Vector3 } from 'three'
import { cellOf, type Plate, plateAtlas } from './plateAtlas'
import { plateMaterial } from './sheetMaterials'
import { useMeshes } from './useMeshes'

const corners = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 0],
  [1, 1],
  [0, 1],
] as const

export function Plates({ plates }: { plates: readonly Plate[] }) {
  return useMeshes(() => {
    const atlas = plateAtlas(plates)
    const material = plateMaterial(atlas)
    const mesh = new Mesh(quads(plates), material)
    mesh.renderOrder = 4
    mesh.frustumCulled = false
    return { meshes: [mesh], also: [atlas, material] }
  }, [plates])
}

function quads(plates: readonly Plate[]): BufferGeometry {
  const position: number[] = []
  const uv: number[] = []
  plates.forEach(({ place, width, height }, i) => {
    const cell = cellOf(i, plates.length)
    for (const [x, y] of corners) {
      position.push(...new Vector3((x - 0.5) * width, (y - 0.5) * height, 0).applyMatrix4(place).toArray())
      uv.push(cell.u + x * cell.wide, cell.v + y * cell.high)
    }
  })
  const geometry = new BufferGeometry()
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(position), 3))
  geometry.setAttribute('uv', new BufferAttribute(new Float32Array(uv), 2))
  return geometry
}
