/** The bar's buttons besides the fixed places: somebody's eyes, up, close; the tape and the sizes of the place. */
import { useStore } from 'zustand'
import type { Belief } from '../../engine'
import { roleLetters, say } from '../../text'
import { gazeAt, lookStore, toggleDimensions } from '../stores/lookStore'
import { putTapeAway, takeTape, tapeStore } from '../stores/tapeStore'
import type { PickId } from './sceneInput'

interface LookProps {
  readonly belief: Belief
  readonly persons: readonly string[]
  readonly thing: PickId | null
  readonly hasTape: boolean
}

/** From the eyes of who is chosen, up at what is overhead, close at what is chosen; and the tape. */
export function LookButtons({ belief, persons, thing, hasTape }: LookProps) {
  const { gaze, hasDimensions } = useStore(lookStore)
  const isTapeOut = useStore(tapeStore, (it) => it.isOut)
  const seeing = belief.persons.find(({ id }) => id === persons[0])
  return (
    <>
      {seeing && (
        <ViewButton
          isOn={gaze?.kind === 'eyes' && gaze.person === seeing.id}
          onPress={() => gazeAt({ kind: 'eyes', person: seeing.id })}
          label={say('scene.eyes', { person: roleLetters(seeing.role) })}
        />
      )}
      <ViewButton isOn={gaze?.kind === 'up'} onPress={() => gazeAt({ kind: 'up' })} label={say('scene.up')} />
      {thing !== null && hasTape && (
        <ViewButton
          isOn={gaze?.kind === 'near' && gaze.id === thing}
          onPress={() => gazeAt({ kind: 'near', id: thing })}
          label={say('scene.closer')}
        />
      )}
      {hasTape && (
        <ViewButton
          isOn={isTapeOut}
          onPress={() => (isTapeOut ? putTapeAway() : takeTape())}
          label={say('scene.tape')}
        />
      )}
      {/* In one row with "Closer" they would not fit. */}
      {hasTape && (thing === null || hasDimensions) && (
        <ViewButton isOn={hasDimensions} onPress={toggleDimensions} label={say('scene.dimensions')} />
      )}
    </>
  )
}

export function ViewButton({ isOn, onPress, label }: { isOn: boolean; onPress: () => void; label: string }) {
  return (
    <button type='button' className='scene-view' aria-pressed={isOn} onClick={onPress}>
      {label}
    </button>
  )
}
