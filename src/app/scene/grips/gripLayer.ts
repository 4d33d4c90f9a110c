/**
 * Handles over the picture: 44 pixels each, carried by pointer or finger, moved with the camera after each drawn frame.
 * Escape puts back what was written before. They are no stop of the keyboard: the fields of the form are.
 */
import { type PerspectiveCamera, Plane, Raycaster, Vector2, Vector3 } from 'three'
import type { Entries } from '../../stores/entries'
import { toGround } from '../site/layout'
import type { Carried, Grip } from './grip'

const dialRadius = 46
/** Pixels for a metre upward, below which a drag says nothing. */
const leastLeverage = 10
const ground = new Plane(new Vector3(0, 1, 0), 0)
const caster = new Raycaster()

interface Carrying {
  readonly grip: Grip
  readonly element: HTMLElement
  readonly pointer: number
  /** As the fields were before. */
  readonly before: Entries
  /** From the grip's own pixel to where it was taken hold of. */
  readonly offset: readonly [number, number]
  /** About the middle of a dial, turns. */
  angle: number
  turned: number
  last: Carried | null
}

export interface GripHost {
  readonly camera: PerspectiveCamera
  readonly screen: () => { readonly width: number; readonly height: number }
  readonly invalidate: () => void
}

export class GripLayer {
  private grips: readonly Grip[] = []
  private readonly elements = new Map<string, HTMLElement>()
  private entries: Entries = {}
  private set: (entries: Entries) => void = () => undefined
  private carrying: Carrying | null = null
  host: GripHost | null = null

  constructor(private readonly root: HTMLElement) {
    window.addEventListener('keydown', this.onKey, true)
  }

  /** @param entries as the fields are now; @param set writes into them */
  show(grips: readonly Grip[], entries: Entries, set: (entries: Entries) => void): void {
    this.grips = grips
    this.entries = entries
    this.set = set
    const keys = new Set(grips.map(({ key }) => key))
    for (const [key, element] of this.elements)
      if (!keys.has(key) && this.carrying?.element !== element) {
        element.remove()
        this.elements.delete(key)
      }
    for (const grip of grips) this.dress(grip)
    if (grips.length === 0 && this.carrying) this.stop()
  }

  /** Stays where the thing is; what is carried stays at the pointer. */
  update(): void {
    if (!this.host) return
    for (const grip of this.grips) {
      const element = this.elements.get(grip.key)
      const at = this.pixelOf(grip.at)
      if (!element) continue
      element.hidden = at === null || !this.hasLeverage(grip)
      if (!at) continue
      const angle = (grip.turns ?? 0) * 2 * Math.PI
      const [dx, dy] = grip.shape === 'dial' ? [dialRadius * Math.sin(angle), -dialRadius * Math.cos(angle)] : [0, 0]
      element.style.transform = `translate(${(at[0] + dx - 22).toFixed(1)}px,${(at[1] + dy - 22).toFixed(1)}px)`
      element.style.setProperty('--dial-x', `${(22 - dx).toFixed(1)}px`)
      element.style.setProperty('--dial-y', `${(22 - dy).toFixed(1)}px`)
    }
  }

  /** The context went, or the picture: what was set so far stays written. */
  drop(): void {
    if (this.carrying) this.stop()
  }

  dispose(): void {
    this.drop()
    window.removeEventListener('keydown', this.onKey, true)
    for (const element of this.elements.values()) element.remove()
    this.elements.clear()
  }

  private dress(grip: Grip): void {
    let element = this.elements.get(grip.key)
    if (!element) {
      element = this.make(grip.key)
      this.elements.set(grip.key, element)
    }
    element.className = `scene-grip scene-grip-${grip.shape}`
    element.dataset.text = grip.text
    element.lastChild!.textContent = grip.text
    ;(element.lastChild as HTMLElement).hidden = grip.text === ''
  }

  private make(key: string): HTMLElement {
    const element = document.createElement('div')
    element.dataset.grip = key
    element.setAttribute('aria-hidden', 'true')
    const figure = document.createElement('span')
    figure.className = 'scene-grip-figure'
    element.append(document.createElement('i'), figure)
    element.addEventListener('pointerdown', (event) => this.take(key, element, event))
    element.addEventListener('pointermove', (event) => this.carry(event))
    element.addEventListener('pointerup', (event) => this.end(event))
    element.addEventListener('pointercancel', () => this.putBack())
    element.addEventListener('dblclick', () => {
      const remove = this.grips.find((grip) => grip.key === key)?.remove
      if (remove) this.set(remove())
    })
    this.root.append(element)
    return element
  }

  private take(key: string, element: HTMLElement, event: PointerEvent): void {
    const grip = this.grips.find((it) => it.key === key)
    const at = grip && this.pixelOf(grip.at)
    if (!grip || !at || event.button !== 0 || this.carrying) return
    event.preventDefault()
    event.stopPropagation()
    element.setPointerCapture(event.pointerId)
    element.classList.add('is-held')
    const here = this.pixelUnder(event)
    this.carrying = {
      grip,
      element,
      pointer: event.pointerId,
      before: this.entries,
      offset: grip.shape === 'dial' ? [0, 0] : [here[0] - at[0], here[1] - at[1]],
      angle: Math.atan2(here[0] - at[0], at[1] - here[1]) / (2 * Math.PI),
      turned: 0,
      last: null,
    }
  }

  private carry(event: PointerEvent): void {
    const { carrying } = this
    if (!carrying || event.pointerId !== carrying.pointer) return
    const here = this.pixelUnder(event)
    carrying.last = this.carriedTo(carrying, here)
    const entries = carrying.last && carrying.grip.carry(carrying.last)
    if (entries) this.set(entries)
    this.host?.invalidate()
  }

  private end(event: PointerEvent): void {
    const { carrying } = this
    if (!carrying || event.pointerId !== carrying.pointer) return
    this.stop()
    if (carrying.last) carrying.grip.letGo?.(carrying.last)
  }

  private putBack(): void {
    const { carrying } = this
    if (!carrying) return
    this.stop()
    this.set(carrying.before)
  }

  private stop(): void {
    const { carrying } = this
    this.carrying = null
    if (!carrying) return
    carrying.element.classList.remove('is-held')
    if (carrying.element.hasPointerCapture(carrying.pointer)) carrying.element.releasePointerCapture(carrying.pointer)
    this.show(this.grips, this.entries, this.set)
    this.host?.invalidate()
  }

  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || !this.carrying) return
    event.preventDefault()
    event.stopImmediatePropagation()
    this.putBack()
  }

  private carriedTo(carrying: Carrying, here: readonly [number, number]): Carried | null {
    const { host } = this
    if (!host) return null
    const { grip, offset } = carrying
    const { width, height } = host.screen()
    const pixel = { x: here[0] - offset[0], y: here[1] - offset[1] }
    caster.setFromCamera(new Vector2((pixel.x / width) * 2 - 1, 1 - (pixel.y / height) * 2), host.camera)
    // A corner is held by its stake's head: the plane it moves in lies as high.
    const isUpright = grip.shape === 'up-down' || grip.shape === 'dial' || grip.shape === 'end'
    ground.constant = isUpright ? 0 : -grip.at.y
    const hit = caster.ray.intersectPlane(ground, new Vector3())
    const middle = this.pixelOf(grip.at)
    if (grip.shape === 'dial' && middle) {
      const angle = Math.atan2(here[0] - middle[0], middle[1] - here[1]) / (2 * Math.PI)
      const step = angle - carrying.angle
      carrying.angle = angle
      carrying.turned += step - Math.round(step)
    }
    if (!hit && !isUpright) return null
    const point = hit ? toGround(hit) : { x: 0, y: 0 }
    return { point, height: heightOn(grip.at), turned: carrying.turned, pixel }
  }

  /** From straight above nothing can be dragged up or down. */
  private hasLeverage({ shape, at }: Grip): boolean {
    if (shape !== 'up-down') return true
    const [low, high] = [this.pixelOf(at), this.pixelOf(at.clone().setY(at.y + 1))]
    return low !== null && high !== null && Math.hypot(high[0] - low[0], high[1] - low[1]) > leastLeverage
  }

  private pixelUnder(event: PointerEvent): readonly [number, number] {
    const { left, top } = this.root.getBoundingClientRect()
    return [event.clientX - left, event.clientY - top]
  }

  private pixelOf(at: Vector3): readonly [number, number] | null {
    if (!this.host) return null
    const { width, height } = this.host.screen()
    const projected = at.clone().project(this.host.camera)
    if (projected.z > 1) return null
    return [((projected.x + 1) / 2) * width, ((1 - projected.y) / 2) * height]
  }
}

/** How high on the upright through a point the caster's ray passes nearest. */
function heightOn(at: Vector3): number {
  const { origin, direction } = caster.ray
  const flat = direction.x ** 2 + direction.z ** 2
  if (flat < 1e-6) return at.y
  const along = ((at.x - origin.x) * direction.x + (at.z - origin.z) * direction.z) / flat
  return origin.y + along * direction.y
}
