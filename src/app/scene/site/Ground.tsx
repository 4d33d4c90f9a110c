/** The sheet and its grass; the field of a livening is written into the sheet's uniforms. */
import { useMemo } from 'react'
import { CircleGeometry, LineSegments, Mesh, type Vector2 } from 'three'
import { groundMaterial } from '../ground/groundMaterial'
import { tableTexture } from '../ground/potential'
import { lasting } from '../ink/lasting'
import { strokeMaterial } from '../ink/sheetMaterials'
import { useMeshes } from '../ink/useMeshes'
import type { LiveningPicture } from './liveningPicture'
import { bakeWires } from '../ink/bakeWires'
import { wire } from '../ink/part'
import { zoneMaterial } from '../ground/zoneMaterial'
import type { Layout } from './layout'
import { grass } from './scenery'

const stroke = lasting(strokeMaterial())

interface GroundProps {
  readonly livening: LiveningPicture | null
  readonly road: Layout['road']
}

export function Ground({ livening, road }: GroundProps) {
  const material = useMemo(groundMaterial, [])
  const sheet = useMeshes(() => {
    const ground = new Mesh(new CircleGeometry(400, 64).rotateX(-Math.PI / 2), material)
    ground.renderOrder = 0
    if (road) (material.uniforms.uRoadAt!.value as Vector2).set(road.from, road.to)
    const tufts = new LineSegments(grass(road), stroke)
    tufts.frustumCulled = false
    tufts.renderOrder = 1.5
    return { meshes: [ground, tufts], also: [material] }
  }, [material, road])
  const field = useMeshes(() => {
    const { uniforms } = material
    uniforms.uLive!.value = livening ? 1 : 0
    // A uniform that still named the old table would upload it again after it was freed.
    uniforms.uTable!.value = null
    if (!livening) return { meshes: [] }
    const table = tableTexture(livening.field)
    uniforms.uTable!.value = table
    livening.field.electrodes.forEach(({ x, z }, i) => (uniforms.uElectrodes!.value as Vector2[])[i]?.set(x, z))
    uniforms.uCount!.value = livening.field.electrodes.length
    uniforms.uInterval!.value = livening.interval
    uniforms.uTop!.value = livening.top
    return { meshes: [], also: [table] }
  }, [livening, material])
  return (
    <>
      {sheet}
      {field}
      {livening && livening.zone.length > 0 && <Zone livening={livening} />}
    </>
  )
}

const zoneMaterials = { casing: lasting(zoneMaterial(true)), line: lasting(zoneMaterial(false)) }

/** Where a pace is too high, as outlines: the engine's own, as on the plan. */
function Zone({ livening }: { livening: LiveningPicture }) {
  return useMeshes(() => {
    const outlines = livening.zone.map((ring) => wire([...ring, ring[0]!], 0.012, 'ink', '', 3, 6))
    const casing = new Mesh(bakeWires(outlines), zoneMaterials.casing)
    const line = new Mesh(bakeWires(outlines), zoneMaterials.line)
    casing.renderOrder = 1.6
    line.renderOrder = 1.7
    for (const mesh of [casing, line]) mesh.frustumCulled = false
    return { meshes: [casing, line] }
  }, [livening])
}
