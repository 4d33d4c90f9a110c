/**
 * The crew as a batch of its own. When somebody stands otherwise than before, a few frames show the way between; then the
 * picture stands still again. With reduced motion it is a cut, and so is everything that comes with the first picture.
 */
import { useFrame, useThree } from '@react-three/fiber'
import { type ReactElement, useLayoutEffect, useMemo, useRef } from 'react'
import type { BufferGeometry, Mesh } from 'three'
import { bakeSolids } from '../ink/bakeSolids'
import { bakeWires } from '../ink/bakeWires'
import { inkMeshes } from '../ink/InkBatch'
import type { Built } from '../ink/part'
import { useMeshes } from '../ink/useMeshes'
import type { Layout } from '../site/layout'
import type { SitePicture } from '../site/sitePicture'
import { changeTakes, hasMoved, stanceBetween } from './between'
import { crewView, type Stances } from './crew'

interface Props {
  readonly crew: Built
  readonly stances: Stances
  readonly layout: Layout
  readonly picture: SitePicture
  readonly isReduced: boolean
}

/** Meshes as they are at rest, and the geometries of the frame between two rests. */
interface Drawn {
  readonly meshes: readonly Mesh[]
  readonly rest: readonly BufferGeometry[]
  passing: readonly BufferGeometry[]
}

export function CrewBatch({ crew, stances, layout, picture, isReduced }: Props): ReactElement {
  const invalidate = useThree((state) => state.invalidate)
  const before = useRef(stances)
  const change = useRef<{ readonly from: Stances; passed: number } | null>(null)
  const drawn = useMemo((): Drawn => {
    const meshes = inkMeshes({ of: crew })
    return { meshes, rest: meshes.map(({ geometry }) => geometry), passing: [] }
  }, [crew])

  useLayoutEffect(() => {
    const from = before.current
    before.current = stances
    change.current = null
    if (from === stances || isReduced || !hasMoved(from, stances)) return
    change.current = { from, passed: 0 }
    invalidate()
  }, [stances, isReduced, invalidate])

  useFrame((_, seconds) => {
    const now = change.current
    if (!now) return
    // The first frame after a rest comes with the time of the rest.
    now.passed += Math.min(seconds, 0.05)
    const share = now.passed / changeTakes
    if (share >= 1) {
      change.current = null
      putToRest(drawn)
    } else {
      const shown = new Map(
        [...stances].map(([id, to]) => [id, stanceBetween(now.from.get(id) ?? to, to, share)] as const),
      )
      pass(drawn, crewView(layout, picture, shown).built)
    }
    invalidate()
  })
  return useMeshes(
    () => ({
      meshes: drawn.meshes,
      also: [...new Set(drawn.rest), { dispose: () => dispose(drawn) }],
    }),
    [drawn],
  )
}

function dispose(drawn: Drawn): void {
  for (const geometry of drawn.passing) geometry.dispose()
  drawn.passing = []
}

function putToRest(drawn: Drawn): void {
  drawn.meshes.forEach((mesh, k) => (mesh.geometry = drawn.rest[k]!))
  dispose(drawn)
}

function pass(drawn: Drawn, { parts, wires }: Built): void {
  const [solid, strand] = [bakeSolids(parts), bakeWires(wires)]
  for (const mesh of drawn.meshes) mesh.geometry = /wire/i.test(mesh.name) ? strand : solid
  dispose(drawn)
  drawn.passing = [solid, strand]
}
