/** Puts the scene on a canvas. The renderer is made here, so that three is tree-shaken; all objects are primitives. */
import { advance, createRoot } from '@react-three/fiber'
import { createElement } from 'react'
import { PerspectiveCamera, setConsoleFunction, WebGLRenderer } from 'three'
import type { OrbitControls } from 'three/addons/controls/OrbitControls.js'
import { type Turn, turnCamera } from './camera/turn'
import { letGo } from './ink/lasting'
import { GripLayer } from './grips/gripLayer'
import type { Hit } from './ink/part'
import { LabelLayer } from './labels/labelLayer'
import { exposeProbe } from './probe'
import type { SceneInput } from './sceneInput'
import { SceneRoot } from './SceneRoot'

// Fiber 9 still makes a Clock, which three announces as outdated; nothing here can change that. All else is passed on.
setConsoleFunction((level, message, ...rest) => {
  // eslint-disable-next-line no-console -- the library's own voice
  if (!message.includes('Clock')) console[level as 'warn' | 'error' | 'log'](message, ...rest)
})

export interface MountedScene {
  readonly show: (input: SceneInput) => void
  readonly turn: (turn: Turn) => void
  readonly unmount: () => void
}

/** The machine can draw it: asked on a canvas of its own, because a canvas keeps its first context; given up at once. */
export function canDraw(): boolean {
  try {
    const context = document.createElement('canvas').getContext('webgl2')
    context?.getExtension('WEBGL_lose_context')?.loseContext()
    return context !== null
  } catch {
    return false
  }
}

export async function mountScene(
  canvas: HTMLCanvasElement,
  labelRoot: HTMLElement,
  gripRoot: HTMLElement,
  first: SceneInput,
): Promise<MountedScene> {
  const wishes = new URLSearchParams(location.search)
  const gl = new WebGLRenderer({
    canvas,
    antialias: wishes.get('aa') !== '0',
    stencil: true,
    powerPreference: 'high-performance',
  })
  const camera = new PerspectiveCamera(40, 1, 0.05, 700)
  camera.position.set(-9, 2, -14) // anywhere but in the target: the first cut starts from here
  const labels = new LabelLayer(labelRoot)
  const grips = new GripLayer(gripRoot)
  const root = createRoot(canvas)
  const frame = canvas.parentElement!
  const sizeOf = () => ({
    width: Math.max(1, frame.clientWidth),
    height: Math.max(1, frame.clientHeight),
    top: 0,
    left: 0,
  })
  const dpr = Number(wishes.get('dpr')) || Math.min(devicePixelRatio, 2)
  await root.configure({
    gl,
    camera,
    size: sizeOf(),
    dpr,
    frameloop: 'demand',
    flat: true,
    linear: true,
    shadows: false,
  })
  let hits: readonly Hit[] = []
  const onHits = (found: readonly Hit[]): void => {
    hits = found
  }
  const show = (input: SceneInput) => root.render(createElement(SceneRoot, { input, labels, grips, onHits }))
  const store = show(first)
  const watcher = new ResizeObserver(() => {
    const { width, height } = sizeOf()
    const { size, setSize } = store.getState()
    if (size.width === width && size.height === height) return
    setSize(width, height, 0, 0)
    // A canvas of another size is empty: it is drawn in the same tick, or it would be seen so.
    advance(performance.now(), true, store.getState())
  })
  watcher.observe(frame)
  const onRestored = (): void => store.getState().invalidate()
  const onLost = (): void => grips.drop()
  canvas.addEventListener('webglcontextlost', onLost)
  canvas.addEventListener('webglcontextrestored', onRestored)
  const hideProbe = wishes.has('probe') ? exposeProbe({ gl, store, camera, canvas, hits: () => hits }) : undefined
  return {
    show: (input) => void show(input),
    turn: (turn) => {
      const controls = store.getState().controls as OrbitControls | null
      if (!controls) return
      turnCamera(camera, controls.target, turn)
      controls.update()
      store.getState().invalidate()
    },
    unmount: () => {
      hideProbe?.()
      watcher.disconnect()
      canvas.removeEventListener('webglcontextrestored', onRestored)
      canvas.removeEventListener('webglcontextlost', onLost)
      root.unmount()
      letGo()
      labels.dispose()
      grips.dispose()
    },
  }
}
