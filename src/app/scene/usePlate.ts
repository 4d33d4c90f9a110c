/** The plate and the name that stay at their things while the picture moves. */
import { useCallback, useRef } from 'react'
import type { Box } from './labels/labelLayer'
import type { AnchorOf } from './sceneInput'

/** Moves the plate with the picture, without React: it sits right of its thing, left when there is no room. */
export function usePlate(thing: string | null, hovered: string | null, coveredRight: number) {
  const nameAt = useRef<HTMLDivElement>(null)
  const plateAt = useRef<HTMLDivElement>(null)
  const onFrame = useCallback(
    (anchorOf: AnchorOf): Box | null => {
      const covered = placeName(nameAt.current, anchorOf, hovered ?? thing, coveredRight)
      const plate = plateAt.current
      const stage = plate?.parentElement
      if (!plate || !stage) return covered
      const anchor = thing === null ? null : anchorOf(thing)
      plate.style.visibility = anchor ? 'visible' : 'hidden'
      if (!anchor) return covered
      const [width, height] = [plate.offsetWidth, plate.offsetHeight]
      const isRight = anchor.x + 28 + width <= stage.clientWidth
      const x = isRight ? anchor.x + 28 : Math.max(4, anchor.x - 28 - width)
      const y = Math.min(Math.max(60, anchor.y - height / 2), stage.clientHeight - height - 4)
      plate.style.transform = `translate(${x.toFixed(1)}px,${y.toFixed(1)}px)`
      return covered
    },
    [thing, hovered, coveredRight],
  )
  return { plateAt, nameAt, onFrame }
}

/** Above its thing, inside the picture. */
function placeName(name: HTMLElement | null, anchorOf: AnchorOf, id: string | null, coveredRight: number): Box | null {
  const stage = name?.parentElement
  if (!name || !stage) return null
  const anchor = id === null ? null : anchorOf(id)
  name.style.visibility = anchor ? 'visible' : 'hidden'
  if (!anchor) return null
  const x = Math.min(Math.max(4, anchor.x + 14), stage.clientWidth - coveredRight - name.offsetWidth - 4)
  const y = Math.max(50, anchor.y - name.offsetHeight - 12)
  name.style.transform = `translate(${x.toFixed(1)}px,${y.toFixed(1)}px)`
  return [x - 4, y - 2, x + name.offsetWidth + 4, y + name.offsetHeight + 2]
}
