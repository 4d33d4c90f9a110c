/** The sheet and its grass; the field of a livening is written into the sheet's uniforms. */
import { useMemo } from 'react'
import { CircleGeometry, LineSegments, Mesh, type Vector2 } from 'three'
import { groundMaterial } from '../ground/groundMaterial'
import { tableTexture } from '../ground/potential'
import { lasting } from '../ink/lasting'
import { strokeMaterial } from '../ink/sheetMaterials'
import { useMeshes } from '../ink/useMeshes'
import type { LiveningPicture } from './liveningPicture'
import { grass } from './scenery'

const stroke = lasting(strokeMaterial())

export function Ground({ livening }: { livening: LiveningPicture | null }) {
  const material = useMemo(groundMaterial, [])
  const sheet = useMeshes(() => {
    const ground = new Mesh(new CircleGeometry(400, 64).rotateX(-Math.PI / 2), material)
    ground.renderOrder = 0
    const tufts = new LineSegments(grass(), stroke)
    tufts.frustumCulled = false
    tufts.renderOrder = 1.5
    return { meshes: [ground, tufts], also: [material] }
  }, [material])
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
    uniforms.uLimitVolts!.value = livening.paceLimit
    uniforms.uTop!.value = livening.top
    return { meshes: [], also: [table] }
  }, [livening, material])
  return (
    <>
      {sheet}
      {field}
    </>
  )
}
