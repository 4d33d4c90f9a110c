/**
 * The site in three dimensions, for the place that the caller gives it (a positioned element with a size). The canvas is
 * hidden from screen readers: the site list says the same. When the machine cannot draw, or stops, `onLost` says so and
 * the caller shows the drawings.
 */
import { type KeyboardEvent, useEffect, useRef, useState } from 'react'
import { say } from '../../text'
import { findTurn } from './camera/turn'
import { canDraw, type MountedScene, mountScene } from './mountScene'
import type { PickId, SceneInput } from './sceneInput'
import './scene.css'

export type { ViewName } from './camera/presets'
export type { SceneInput } from './sceneInput'

interface Props extends SceneInput {
  /** `none`: this machine has no WebGL 2; `lost`: it had, and may come back. */
  readonly onLost?: (how: 'none' | 'lost') => void
  readonly onRestored?: () => void
}

export default function SiteScene(props: Props) {
  const stage = useRef<HTMLDivElement>(null)
  const labels = useRef<HTMLDivElement>(null)
  const grips = useRef<HTMLDivElement>(null)
  const scene = useRef<MountedScene | null>(null)
  const latest = useRef(props)
  const [isOver, setOver] = useState(false)
  const onHover = (id: PickId | null): void => {
    setOver(id !== null)
    props.onHover?.(id)
  }
  const input = { ...props, onHover }

  useEffect(() => {
    latest.current = input
    scene.current?.show(input)
  })

  useEffect(() => {
    if (!canDraw()) {
      latest.current.onLost?.('none')
      return
    }
    // A canvas keeps its context, so each mount gets one of its own.
    const canvas = document.createElement('canvas')
    canvas.setAttribute('aria-hidden', 'true')
    stage.current!.prepend(canvas)
    const onLost = (event: Event): void => {
      event.preventDefault()
      latest.current.onLost?.('lost')
    }
    const onRestored = (): void => latest.current.onRestored?.()
    canvas.addEventListener('webglcontextlost', onLost)
    canvas.addEventListener('webglcontextrestored', onRestored)
    let isGone = false
    const unmount = (mounted: MountedScene): void => {
      mounted.unmount()
      canvas.remove()
    }
    void mountScene(canvas, labels.current!, grips.current!, latest.current).then((mounted) => {
      if (isGone) return unmount(mounted)
      scene.current = mounted
      mounted.show(latest.current)
    })
    return () => {
      isGone = true
      canvas.removeEventListener('webglcontextlost', onLost)
      canvas.removeEventListener('webglcontextrestored', onRestored)
      if (scene.current) unmount(scene.current)
      scene.current = null
    }
  }, [])

  const classes = ['scene-stage', isOver ? 'is-over' : '', props.onGroundPoint ? 'is-placing' : '']
    .filter(Boolean)
    .join(' ')
  const onKeyDown = (event: KeyboardEvent<HTMLDivElement>): void => {
    const turn = findTurn(event.key)
    if (!turn || event.altKey || event.ctrlKey || event.metaKey) return
    event.preventDefault()
    event.stopPropagation()
    scene.current?.turn(turn)
  }
  return (
    <div className={classes} ref={stage} tabIndex={0} role='group' aria-label={say('scene.name')} onKeyDown={onKeyDown}>
      <div className='scene-labels' aria-hidden='true' ref={labels} />
      <div className='scene-grips' aria-hidden='true' ref={grips} />
      {props.isFrozen && (
        <div className='scene-frame' aria-hidden='true' style={{ top: (props.inset?.top ?? 0) + 6 }} />
      )}
    </div>
  )
}
