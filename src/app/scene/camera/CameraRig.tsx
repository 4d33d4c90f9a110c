/** Flies to a view on an arc round its moving target, never through the pole; cuts with reduced motion. Orbit by hand afterwards. */
import { useFrame, useThree } from '@react-three/fiber'
import { useEffect, useMemo, useRef } from 'react'
import { MOUSE, type PerspectiveCamera, Spherical, TOUCH, type Vector3 } from 'three'
import { OrbitControls } from 'three/addons/controls/OrbitControls.js'
import type { Gaze } from '../../stores/lookStore'
import type { Inset } from '../labels/labelLayer'
import { findView, type GazeSource } from './gaze'
import { fitted } from './fit'
import { type CameraView, framed, type FreeShare, type Seen, shownBy, viewFor, type ViewName } from './presets'

/** Seconds. */
const flightTime = 0.7
const ease = (t: number): number => t * t * (3 - 2 * t)

interface Flight {
  done: number
  readonly from: Spherical
  readonly to: Spherical
  readonly targets: readonly [Vector3, Vector3]
  readonly lenses: readonly [number, number]
}

interface Props {
  readonly view: ViewName
  /** Instead of the view. */
  readonly gaze: Gaze | null
  /** What a gaze is worked out from, when it is asked for. */
  readonly source: () => Omit<GazeSource, 'camera' | 'target'> & Seen
  /** Somebody is on the pole below the LV wires: another pole top. */
  readonly hasLowerStation: boolean
  /** How often a view was asked for: the same view again is flown to again. */
  readonly asked: number
  readonly inset: Inset
  readonly isReduced: boolean
  readonly canOrbit: boolean
}

export function CameraRig({ view, gaze, source, hasLowerStation, asked, inset, isReduced, canOrbit }: Props) {
  const camera = useThree((state) => state.camera) as PerspectiveCamera
  const gl = useThree((state) => state.gl)
  const invalidate = useThree((state) => state.invalidate)
  const setState = useThree((state) => state.set)
  const size = useThree((state) => state.size)
  const controls = useMemo(() => new OrbitControls(camera, gl.domElement), [camera, gl])
  const flight = useRef<Flight | null>(null)
  const isFirst = useRef(true)

  useEffect(() => {
    controls.connect(gl.domElement)
    controls.minDistance = 0.4
    controls.maxDistance = 90
    setState({ controls })
    const again = (): void => {
      controls.maxPolarAngle = lowestAngle(camera, controls.target)
      invalidate()
    }
    controls.addEventListener('change', again)
    return () => {
      controls.removeEventListener('change', again)
      controls.dispose()
    }
  }, [camera, controls, gl, invalidate, setState])

  useEffect(() => {
    // While a place is asked for the first finger places; the wheel, two fingers and the other buttons look round.
    controls.mouseButtons = {
      LEFT: canOrbit ? MOUSE.ROTATE : null,
      MIDDLE: MOUSE.DOLLY,
      RIGHT: canOrbit ? MOUSE.PAN : MOUSE.ROTATE,
    }
    controls.touches = { ONE: canOrbit ? TOUCH.ROTATE : null, TWO: TOUCH.DOLLY_PAN }
  }, [controls, canOrbit])

  useEffect(() => {
    const free = {
      wide: (size.width - inset.right) / size.width,
      high: (size.height - inset.top - inset.bottom) / size.height,
    }
    const seen = source()
    const special = gaze && findView(gaze, { ...seen, camera, target: controls.target })
    const aim = special ?? aimOf(view, seen, size.width / size.height, free)
    flight.current = planFlight(camera, controls.target, aim, isReduced || isFirst.current)
    isFirst.current = false
    invalidate()
  }, [
    view,
    gaze,
    source,
    hasLowerStation,
    asked,
    inset.top,
    inset.bottom,
    inset.right,
    size.width,
    size.height,
    isReduced,
    camera,
    controls,
    invalidate,
  ])

  useEffect(() => {
    // The picture is centred in what the panels leave free.
    camera.setViewOffset(
      size.width,
      size.height,
      inset.right / 2,
      (inset.bottom - inset.top) / 2,
      size.width,
      size.height,
    )
    invalidate()
  }, [camera, inset.top, inset.bottom, inset.right, size.width, size.height, invalidate])

  useFrame((_, seconds) => {
    if (!flight.current) return
    fly(flight.current, camera, controls, Math.min(seconds, 0.05) / flightTime)
    if (flight.current.done === 1) flight.current = null
    else invalidate()
  })
  return null
}

/** Moved to what is about, where the view says what it has to show; else as it is. */
function aimOf(name: ViewName, seen: Seen, aspect: number, free: FreeShare): CameraView {
  const [view, shown] = [viewFor(name, seen), shownBy(name, seen)]
  return shown.length > 0 ? fitted(view, shown, aspect, free) : framed(view, aspect, free)
}

/** The eye stays above the ground, however high the target is. */
function lowestAngle(camera: PerspectiveCamera, target: Vector3): number {
  const radius = camera.position.distanceTo(target)
  return Math.acos(Math.min(1, Math.max(-1, (0.3 - target.y) / radius)))
}

function planFlight(camera: PerspectiveCamera, target: Vector3, view: CameraView, isCut: boolean): Flight {
  const to = new Spherical().setFromVector3(view.eye.clone().sub(view.target))
  const from = new Spherical().setFromVector3(camera.position.clone().sub(target))
  if (Math.abs(to.theta - from.theta) > Math.PI) to.theta += to.theta < from.theta ? Math.PI * 2 : -Math.PI * 2
  return {
    done: isCut ? 1 : 0,
    from,
    to,
    targets: [target.clone(), view.target.clone()],
    lenses: [camera.fov, view.fov],
  }
}

function fly(flight: Flight, camera: PerspectiveCamera, controls: OrbitControls, share: number): void {
  flight.done = Math.min(1, flight.done + share)
  const k = ease(flight.done)
  const { from, to, targets, lenses } = flight
  const mix = (a: number, b: number): number => a + (b - a) * k
  const radius = Math.exp(mix(Math.log(from.radius), Math.log(to.radius)))
  controls.maxPolarAngle = Math.PI
  controls.target.lerpVectors(targets[0], targets[1], k)
  camera.position
    .setFromSpherical(new Spherical(radius, mix(from.phi, to.phi), mix(from.theta, to.theta)))
    .add(controls.target)
  camera.fov = mix(lenses[0], lenses[1])
  camera.near = Math.max(0.02, radius * 0.02)
  camera.far = 700
  camera.updateProjectionMatrix()
  controls.update()
}
