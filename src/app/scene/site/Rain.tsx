/** Rain as sparse pen strokes: one call, drawn once, never moving by itself. */
import { LineSegments } from 'three'
import { lasting } from '../ink/lasting'
import { rainMaterial } from '../ink/sheetMaterials'
import { useMeshes } from '../ink/useMeshes'
import { rain } from './scenery'

const stroke = lasting(rainMaterial())

export const Rain = ({ wind }: { wind: number }) =>
  useMeshes(() => {
    const strokes = new LineSegments(rain(wind), stroke)
    strokes.frustumCulled = false
    strokes.renderOrder = 5
    return { meshes: [strokes] }
  }, [wind])
