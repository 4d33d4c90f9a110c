/**
 * A stroke that sets two things at once, before there is a handle: across the ground a place or a rectangle, along the
 * pole both edges of a cover. It begins on the bare picture; Escape puts back what was written before.
 */
import { type PerspectiveCamera, Raycaster, Vector2, Vector3 } from 'three'
import type { GroundPoint } from '../../../engine'
import { tidySpot } from '../../stores/aimStore'
import { type Entries, figureText, rectangle } from '../../stores/entries'
import type { Handled, Handling } from '../../stores/handling'
import { groundAt } from '../pick/groundAt'

/** Pixels before it is a stroke and not a press; pixels beside the pole that still mean it. */
const least = 6
const besidePole = 40

interface Place {
  readonly ground: GroundPoint | undefined
  /** Metres up the pole. */
  readonly height: number
}

export interface StrokeView {
  readonly canvas: HTMLCanvasElement
  readonly camera: PerspectiveCamera
  readonly screen: { readonly width: number; readonly height: number }
}

interface Stroke {
  readonly x: number
  readonly y: number
  readonly from: Place
  readonly before: Entries
  readonly pointer: number
  isOn: boolean
}

export function listenForStrokes(view: StrokeView, now: () => Handling | null): () => void {
  const { canvas } = view
  let stroke: Stroke | null = null
  const onDown = (event: PointerEvent): void => {
    const handling = now()
    if (stroke || !handling || !event.isPrimary || event.button !== 0) return
    const { offsetX: x, offsetY: y } = event
    if (!takesStroke(handling.handled, view, x, y)) return
    stroke = { x, y, from: placeAt(view, x, y), before: handling.entries, pointer: event.pointerId, isOn: false }
    // On the pole the camera would turn with it.
    if (handling.handled.kind === 'extent') event.stopImmediatePropagation()
  }
  const onMove = (event: PointerEvent): void => {
    const handling = now()
    if (!stroke || event.pointerId !== stroke.pointer || !handling) return
    if (!stroke.isOn && Math.hypot(event.offsetX - stroke.x, event.offsetY - stroke.y) < least) return
    if (!stroke.isOn) canvas.setPointerCapture(event.pointerId)
    stroke.isOn = true
    const entries = entriesOf(handling.handled, stroke.from, placeAt(view, event.offsetX, event.offsetY))
    if (entries) handling.set(entries)
  }
  const end = (): void => {
    stroke = null
  }
  const putBack = (): void => {
    if (stroke?.isOn) now()?.set(stroke.before)
    stroke = null
  }
  const onKey = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || !stroke?.isOn) return
    event.preventDefault()
    event.stopImmediatePropagation()
    putBack()
  }
  canvas.addEventListener('pointerdown', onDown, true)
  canvas.addEventListener('pointermove', onMove)
  canvas.addEventListener('pointerup', end)
  canvas.addEventListener('pointercancel', putBack)
  window.addEventListener('keydown', onKey, true)
  return () => {
    canvas.removeEventListener('pointerdown', onDown, true)
    canvas.removeEventListener('pointermove', onMove)
    canvas.removeEventListener('pointerup', end)
    canvas.removeEventListener('pointercancel', putBack)
    window.removeEventListener('keydown', onKey, true)
  }
}

function takesStroke(handled: Handled, view: StrokeView, x: number, y: number): boolean {
  if (handled.kind === 'spot') return true
  if (handled.kind === 'outline') return handled.points.length < 3
  if (handled.kind !== 'extent') return false
  const on = new Vector3(0, placeAt(view, x, y).height, 0).project(view.camera)
  return on.z < 1 && Math.abs(((on.x + 1) / 2) * view.screen.width - x) < besidePole
}

function entriesOf(handled: Handled, from: Place, to: Place): Entries | null {
  if (handled.kind === 'spot') return to.ground ? { [handled.field]: { points: [tidySpot(to.ground)] } } : null
  if (handled.kind === 'outline')
    return from.ground && to.ground
      ? { [handled.field]: { points: rectangle(tidySpot(from.ground), tidySpot(to.ground)) } }
      : null
  if (handled.kind !== 'extent') return null
  return {
    [handled.from.field]: { text: figureText(handled.from, Math.min(from.height, to.height)) },
    [handled.to.field]: { text: figureText(handled.to, Math.max(from.height, to.height)) },
  }
}

const caster = new Raycaster()

function placeAt({ camera, screen }: StrokeView, x: number, y: number): Place {
  caster.setFromCamera(new Vector2((x / screen.width) * 2 - 1, 1 - (y / screen.height) * 2), camera)
  const { origin, direction } = caster.ray
  const flat = direction.x ** 2 + direction.z ** 2
  const along = flat < 1e-6 ? 0 : -(origin.x * direction.x + origin.z * direction.z) / flat
  return { ground: groundAt(camera, screen, x, y), height: origin.y + along * direction.y }
}
