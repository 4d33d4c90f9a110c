/**
 * Pointer and touch on the canvas: hover, a pick, a second pick on the same thing (the act), a long press (look), and a
 * point of the ground while a quantity asks for one. A drag is the camera's.
 */
import { useThree } from '@react-three/fiber'
import { useEffect, useRef } from 'react'
import type { PerspectiveCamera } from 'three'
import type { GroundPoint } from '../../../engine'
import type { TapeEnd } from '../../stores/tapeStore'
import type { Hit } from '../ink/part'
import { selectedTag } from '../ink/tag'
import { shared } from '../ink/uniforms'
import { groundAt } from './groundAt'
import { pick, slack } from './pick'

export interface PickIntents {
  readonly onSelect: (id: string | null) => void
  readonly onAct: (id: string) => void
  readonly onLook?: ((id: string) => void) | undefined
  readonly onHover?: ((id: string | null) => void) | undefined
  /** Set while the tape is out: a pick holds its next end. */
  readonly onTape?: ((end: TapeEnd) => void) | undefined
  /** Set while a point of the ground is asked for; picks rest meanwhile. */
  readonly onGroundPoint?: ((point: GroundPoint, how: 'move' | 'press') => void) | undefined
}

interface Props extends PickIntents {
  readonly hits: readonly Hit[]
  readonly selection: string | null
}

/** A press that wandered this far, pixels, turned the camera; held this long, milliseconds, it is a look. */
const drag = 6
const longPress = 550

export function Picker(props: Props) {
  const { gl, camera, size, invalidate } = useThree()
  const latest = useRef(props)
  useEffect(() => {
    latest.current = props
  })
  useEffect(() => {
    const canvas = gl.domElement
    const view = { canvas, camera: camera as PerspectiveCamera, screen: size, invalidate }
    return listen(view, () => latest.current)
  }, [gl, camera, size, invalidate])
  return null
}

interface View {
  readonly canvas: HTMLCanvasElement
  readonly camera: PerspectiveCamera
  readonly screen: { readonly width: number; readonly height: number }
  readonly invalidate: () => void
}

interface Press {
  readonly x: number
  readonly y: number
  readonly timer: ReturnType<typeof setTimeout>
  isSpent: boolean
}

function listen(view: View, now: () => Props): () => void {
  const { canvas } = view
  let press: Press | null = null
  let hovered: string | null = null
  const find = (event: PointerEvent): string | null =>
    pick(
      now().hits,
      view.camera,
      view.screen,
      event.offsetX,
      event.offsetY,
      event.pointerType === 'touch' ? slack.touch : slack.mouse,
    )?.id ?? null
  const hover = (id: string | null): void => {
    if (id === hovered) return
    hovered = id
    shared.uHovered.value = selectedTag(id)
    now().onHover?.(id)
    view.invalidate()
  }
  const drop = (): void => {
    if (press) clearTimeout(press.timer)
    press = null
  }
  const onDown = (event: PointerEvent): void => {
    drop()
    if (!event.isPrimary || event.button !== 0) return
    const { clientX: x, clientY: y } = event
    const id = find(event)
    const timer = setTimeout(() => {
      if (!press || press.isSpent || !id || now().onGroundPoint) return
      press.isSpent = true
      now().onLook?.(id)
    }, longPress)
    press = { x, y, timer, isSpent: false }
  }
  const onMove = (event: PointerEvent): void => {
    if (press && Math.hypot(event.clientX - press.x, event.clientY - press.y) >= drag) press.isSpent = true
    if (event.buttons !== 0 || event.pointerType === 'touch') return
    const { onGroundPoint } = now()
    if (!onGroundPoint) return hover(find(event))
    hover(null)
    const point = groundUnder(view, event)
    if (point) onGroundPoint(point, 'move')
  }
  const onUp = (event: PointerEvent): void => {
    const isPick = press !== null && !press.isSpent
    drop()
    if (!isPick) return
    const { onGroundPoint, onSelect, onAct, selection } = now()
    if (onGroundPoint) {
      const point = groundUnder(view, event)
      if (point) onGroundPoint(point, 'press')
      return
    }
    const { onTape } = now()
    if (onTape) {
      const end = tapeEnd(find(event), groundUnder(view, event))
      if (end) onTape(end)
      return
    }
    // Bare ground is a thing of the site, too; the sky is nothing.
    const id = find(event) ?? (groundUnder(view, event) ? 'ground' : null)
    if (id !== null && id === selection) onAct(id)
    else onSelect(id)
  }
  const onLeave = (): void => hover(null)
  const stop = (event: Event): void => event.preventDefault()
  canvas.addEventListener('pointerdown', onDown)
  canvas.addEventListener('pointermove', onMove)
  canvas.addEventListener('pointerup', onUp)
  canvas.addEventListener('pointercancel', drop)
  canvas.addEventListener('pointerleave', onLeave)
  canvas.addEventListener('contextmenu', stop)
  // A pick opens the slip; the click that a browser sends after a finger would fall on what then lies under it.
  canvas.addEventListener('touchend', stop, { passive: false })
  return () => {
    drop()
    hover(null)
    canvas.removeEventListener('pointerdown', onDown)
    canvas.removeEventListener('pointermove', onMove)
    canvas.removeEventListener('pointerup', onUp)
    canvas.removeEventListener('pointercancel', drop)
    canvas.removeEventListener('pointerleave', onLeave)
    canvas.removeEventListener('contextmenu', stop)
    canvas.removeEventListener('touchend', stop)
  }
}

const tapeEnd = (id: string | null, at: GroundPoint | undefined): TapeEnd | undefined =>
  id !== null ? { kind: 'thing', id } : at && { kind: 'ground', at }

const groundUnder = ({ camera, screen }: View, { offsetX, offsetY }: PointerEvent): GroundPoint | undefined =>
  groundAt(camera, screen, offsetX, offsetY)
