/**
 * A place on the ground, by hand: the cross-hair moves with the arrow keys (half a metre; with Shift five centimetres) or
 * the pointer, and Enter or a press sets it. An outline is a rectangle between two corners, or corner by corner.
 */
import { type KeyboardEvent, useEffect, useState } from 'react'
import { say, spotWords } from '../../../text'
import { askForSpot, stopAsking } from '../../stores/aimStore'
import { jobStore } from '../../stores/jobStore'
import { SitePlan } from '../drawing/SitePlan'
import { Aim } from '../drawing/Marks'
import { viewOfSite } from '../drawing/viewOfSite'

export interface GroundSpot {
  readonly x: number
  readonly y: number
}

export interface AimPadProps {
  readonly label: string
  /** Points set so far, drawn as a pencil outline. */
  readonly set: readonly GroundSpot[]
  readonly onSet: (at: GroundSpot) => void
  /** All that it asks for is set: a press in the picture changes nothing any more, Enter goes on. */
  readonly isComplete?: boolean
  /** An outline between its first corner and its last. */
  readonly isOpen?: boolean
}

const nothing = (): void => undefined

const frame = { width: 320, height: 216, perMetre: 8, origin: [172, 116] as const }

const steps: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
}

const tidy = (value: number): number => Math.round(value * 20) / 20

export function AimPad({ label, set, onSet, isComplete = false, isOpen = false }: AimPadProps) {
  const [aim, setAim] = useState<GroundSpot>({ x: 0, y: 0 })
  useEffect(() => askForSpot({ set, onSet: isComplete ? nothing : onSet, isOpen }))
  useEffect(() => stopAsking, [])
  const { belief } = jobStore.getState()
  if (!belief) return null
  const onKeyDown = (event: KeyboardEvent) => {
    const step = steps[event.key]
    if (step) {
      const by = event.shiftKey ? 0.05 : 0.5
      setAim({ x: tidy(aim.x + step[0] * by), y: tidy(aim.y + step[1] * by) })
    } else if (event.key === 'Enter') onSet(aim)
    else return
    event.preventDefault()
    event.stopPropagation()
  }
  const words = spotWords(aim)
  return (
    <div>
      <div
        className='aimpad'
        role='application'
        tabIndex={0}
        data-aim
        aria-label={`${label}. ${say('aim.how')} ${words}`}
        onKeyDown={onKeyDown}
      >
        <SitePlan
          site={viewOfSite(belief)}
          frame={frame}
          selectedPersons={[]}
          title={label}
          onPoint={(at) => {
            const spot = { x: tidy(at.x), y: tidy(at.y) }
            setAim(spot)
            if (!isComplete) onSet(spot)
          }}
        >
          {(scale) => (
            <>
              {set.length > 0 && (
                <path
                  d={`M${set.map((at) => `${scale.x(at.x)} ${scale.y(at.y)}`).join('L')}${isComplete ? 'Z' : `L${scale.x(aim.x)} ${scale.y(aim.y)}`}`}
                  className='d-acc'
                  style={{ strokeDasharray: '6 4' }}
                />
              )}
              <Aim x={scale.x(aim.x)} y={scale.y(aim.y)} />
            </>
          )}
        </SitePlan>
      </div>
      <p className='note' aria-live='polite'>
        {words}
      </p>
    </div>
  )
}
