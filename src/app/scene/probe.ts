/** Eyes and fingers for tests, only when the address asks for them: what is drawn, and where a thing can really be pressed. */
import type { RootStore } from '@react-three/fiber'
import type { PerspectiveCamera, WebGLRenderer } from 'three'
import type { Hit } from './ink/part'
import { groundAt } from './pick/groundAt'
import { findPixel, pick, slack } from './pick/pick'

export interface Probed {
  readonly gl: WebGLRenderer
  readonly store: RootStore
  readonly camera: PerspectiveCamera
  readonly canvas: HTMLCanvasElement
  readonly hits: () => readonly Hit[]
}

export interface SceneProbe {
  /** A pixel of the page at which a pick gives this thing; null when it cannot be hit from here. */
  readonly pick: (id: string, pointer?: keyof typeof slack) => { readonly x: number; readonly y: number } | null
  /** A pixel of the page whose ground point is this one when it is tidied to five centimetres, metres east and north. */
  readonly ground: (x: number, y: number) => { readonly x: number; readonly y: number } | null
  /** A pixel of the page at which a pick gives nothing: the sky. */
  readonly nothing: () => { readonly x: number; readonly y: number } | null
  readonly ids: () => readonly string[]
  readonly info: () => {
    readonly frames: number
    readonly calls: number
    readonly triangles: number
    readonly programs: number
    readonly geometries: number
    readonly textures: number
  }
  /** Median milliseconds of a frame drawn and read back. */
  readonly time: (rounds?: number) => number
  readonly lose: () => void
  readonly restore: () => void
}

declare global {
  interface Window {
    sceneProbe?: SceneProbe
  }
}

export function exposeProbe({ gl, store, camera, canvas, hits }: Probed): () => void {
  const context = gl.getContext()
  const loss = context.getExtension('WEBGL_lose_context')
  const isFree = (x: number, y: number): boolean => {
    const { left, top } = canvas.getBoundingClientRect()
    return document.elementFromPoint(left + x, top + y) === canvas
  }
  const groundOf = (x: number, y: number) => groundAt(camera, store.getState().size, x, y)
  const isBare = (x: number, y: number): boolean =>
    isFree(x, y) && !pick(hits(), camera, store.getState().size, x, y, slack.touch)
  /** The first pixel of the picture, coarse or fine, that will do; in pixels of the page. */
  const findWhere = (step: number, suits: (x: number, y: number) => boolean) => {
    const { left, top, width, height } = canvas.getBoundingClientRect()
    for (let y = 60; y < height; y += step)
      for (let x = 20; x < width; x += step) if (suits(x, y)) return { x: left + x, y: top + y }
    return null
  }
  const probe: SceneProbe = {
    pick: (id, pointer = 'mouse') => {
      if (id === 'ground') return findWhere(20, (x, y) => isBare(x, y) && groundOf(x, y) !== undefined)
      const { left, top } = canvas.getBoundingClientRect()
      const found = findPixel(hits(), id, camera, store.getState().size, slack[pointer], isFree)
      return found ? { x: left + found.x, y: top + found.y } : null
    },
    ground: (east, north) =>
      findWhere(1, (x, y) => {
        const at = groundOf(x, y)
        return at !== undefined && Math.abs(at.x - east) < 0.025 && Math.abs(at.y - north) < 0.025 && isFree(x, y)
      }),
    nothing: () => findWhere(20, (x, y) => isBare(x, y) && groundOf(x, y) === undefined),
    ids: () => [...new Set(hits().map(({ id }) => id))],
    info: () => ({
      frames: gl.info.render.frame,
      calls: gl.info.render.calls,
      triangles: gl.info.render.triangles,
      programs: gl.info.programs?.length ?? 0,
      geometries: gl.info.memory.geometries,
      textures: gl.info.memory.textures,
    }),
    time: (rounds = 7) => {
      const pixel = new Uint8Array(4)
      const times = Array.from({ length: rounds }, () => {
        const start = performance.now()
        gl.render(store.getState().scene, camera)
        context.readPixels(0, 0, 1, 1, context.RGBA, context.UNSIGNED_BYTE, pixel)
        return performance.now() - start
      })
      return times.sort((a, b) => a - b)[Math.floor(rounds / 2)]!
    },
    lose: () => loss?.loseContext(),
    restore: () => loss?.restoreContext(),
  }
  window.sceneProbe = probe
  return () => {
    if (window.sceneProbe === probe) delete window.sceneProbe
  }
}
