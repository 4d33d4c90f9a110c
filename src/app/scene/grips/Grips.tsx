/** Handles and strokes of what is being set, kept up with the fields of the form. */
import { useFrame, useThree } from '@react-three/fiber'
import { useEffect, useMemo, useRef } from 'react'
import type { PerspectiveCamera, Vector3 } from 'three'
import type { Handling } from '../../stores/handling'
import type { Layout } from '../site/layout'
import { type GripLayer } from './gripLayer'
import { gripsOf } from './gripsOf'
import { listenForStrokes } from './strokes'
import type { Way } from './ways'

interface Props {
  readonly handling: Handling | null
  readonly layer: GripLayer
  readonly layout: Layout
  readonly ways: readonly Way[]
  readonly seatOf: (thing: string) => Vector3 | undefined
}

const ignore = (): void => undefined

export function Grips({ handling, layer, layout, ways, seatOf }: Props) {
  const { gl, size, invalidate, get } = useThree()
  const camera = useThree((state) => state.camera) as PerspectiveCamera
  const latest = useRef(handling)
  const places = useMemo(
    () => ({ layout, seatOf, ways, camera, screen: () => get().size }),
    [layout, seatOf, ways, camera, get],
  )
  useEffect(() => {
    latest.current = handling
    layer.host = { camera, screen: () => get().size, invalidate }
    layer.show(handling ? gripsOf(handling, places) : [], handling?.entries ?? {}, handling?.set ?? ignore)
    invalidate()
  }, [handling, layer, places, camera, get, invalidate])
  useEffect(
    () => listenForStrokes({ canvas: gl.domElement, camera, screen: size }, () => latest.current),
    [gl, camera, size],
  )
  useFrame(() => layer.update())
  return null
}
