/** Currents of one instant: wires, leads, rods and pole where they are; the way through a body on top of everything. */
import { Mesh } from 'three'
import { bakeFlows } from '../ink/bakeWires'
import { useMeshes } from '../ink/useMeshes'
import { flowMaterial } from '../ink/wireMaterials'
import type { LiveningPicture } from './liveningPicture'

const materials = { through: flowMaterial(false), body: flowMaterial(true) }

export function Flows({ livening }: { livening: LiveningPicture }) {
  return useMeshes(() => {
    const through = new Mesh(bakeFlows(livening.flows, livening.most), materials.through)
    const bodies = new Mesh(bakeFlows(livening.bodies, livening.most), materials.body)
    through.renderOrder = 4
    bodies.renderOrder = 5
    const meshes = [through, bodies].filter((mesh) => mesh.geometry.getAttribute('position').count > 0)
    for (const mesh of meshes) mesh.frustumCulled = false
    return { meshes }
  }, [livening])
}
