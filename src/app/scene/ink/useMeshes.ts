/** Meshes as primitives. Fiber does not dispose primitives: whoever builds a geometry frees it. */
import { createElement, Fragment, type ReactElement, useEffect, useMemo } from 'react'
import type { LineSegments, Mesh } from 'three'

export interface Owned {
  readonly meshes: readonly (Mesh | LineSegments)[]
  /** Materials and textures made for these meshes alone. */
  readonly also?: readonly { dispose(): void }[]
}

/** @param causes what a rebuild depends on, stated by the caller */
export function useMeshes(build: () => Owned, causes: readonly unknown[]): ReactElement {
  const owned = useMemo(build, causes)
  useEffect(
    () => () => {
      for (const mesh of owned.meshes) mesh.geometry.dispose()
      for (const other of owned.also ?? []) other.dispose()
    },
    [owned],
  )
  return createElement(
    Fragment,
    null,
    owned.meshes.map((mesh) => createElement('primitive', { key: mesh.uuid, object: mesh })),
  )
}
