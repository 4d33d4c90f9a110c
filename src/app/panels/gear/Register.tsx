/** Rows of the register: one tab stop, arrows move, Enter books out. */
import { type KeyboardEvent, useEffect, useRef } from 'react'
import type { Belief, ItemBelief } from '../../../engine'
import { type Speaker, say } from '../../../text'
import { lettersOf } from '../site/lettersOf'
import { holdInHand } from '../../stores/viewStore'
import { turnOver } from './turnOver'

export interface RegisterProps {
  readonly belief: Belief
  readonly speaker: Speaker
  readonly chosen: string
  readonly onChoose: (id: string) => void
}

export function Register({ belief, speaker, chosen, onChoose }: RegisterProps) {
  const list = useRef<HTMLDivElement>(null)
  useEffect(() => {
    list.current?.querySelector('[aria-selected="true"]')?.scrollIntoView({ block: 'nearest' })
  }, [chosen])
  const move = (to: number) => {
    const item = belief.items[Math.min(belief.items.length - 1, Math.max(0, to))]
    if (!item) return
    onChoose(item.id)
    list.current?.querySelector<HTMLElement>(`[data-item="${CSS.escape(item.id)}"]`)?.focus()
  }
  const onKeyDown = (event: KeyboardEvent) => {
    const index = belief.items.findIndex((it) => it.id === chosen)
    const steps: Record<string, () => void> = {
      ArrowDown: () => move(index + 1),
      ArrowUp: () => move(index - 1),
      PageDown: () => move(index + 10),
      PageUp: () => move(index - 10),
      Home: () => move(0),
      End: () => move(belief.items.length - 1),
      Enter: () => {
        onChoose(chosen)
        turnOver('book-out', chosen)
      },
    }
    const step = steps[event.key]
    if (!step || event.altKey) return
    event.preventDefault()
    step()
  }
  return (
    <>
      <div className='reghead note' aria-hidden='true'>
        <span>{say('gear.id')}</span>
        <span>{say('gear.name')}</span>
        <span>{say('gear.where')}</span>
        <span>{say('gear.evidence')}</span>
        <span>{say('gear.verdict')}</span>
      </div>
      <div
        ref={list}
        className='scroll grow reg'
        role='listbox'
        aria-label={say('gear.register')}
        onKeyDown={onKeyDown}
      >
        {belief.items.map((item) => (
          <div
            key={item.id}
            role='option'
            aria-selected={item.id === chosen}
            tabIndex={item.id === chosen ? 0 : -1}
            data-item={item.id}
            className={item.id === chosen ? 'regrow sel' : 'regrow'}
            onClick={() => {
              // Picking up another puts down what was in the hand.
              holdInHand(null)
              onChoose(item.id)
            }}
          >
            <span className='n'>{item.id}</span>
            <span>{speaker.say(`gear.${item.type}`)}</span>
            <span className='q'>{whereWord(item, belief, speaker)}</span>
            <span className='q'>{evidenceWord(item)}</span>
            <VerdictMark item={item} />
          </div>
        ))}
      </div>
    </>
  )
}

function whereWord({ where }: ItemBelief, belief: Belief, speaker: Speaker): string {
  if (where.kind === 'person') return lettersOf(belief, where.person)
  return speaker.say(`where.${where.kind}`)
}

/** Which of the three looks were taken. */
function evidenceWord({ evidence }: ItemBelief): string {
  const has = (by: string) => evidence.some((it) => it.by === by)
  return [has('look') && say('gear.looked'), has('label') && say('gear.read'), has('test') && say('gear.tested')]
    .filter(Boolean)
    .join(', ')
}

function VerdictMark({ item }: { item: ItemBelief }) {
  if (item.verdict === null) return <span className='q'>{item.bookedOut ? say('gear.open') : ''}</span>
  const isPass = item.verdict === 'pass'
  return (
    <span className='verdictmark'>
      <svg width='18' height='16' viewBox='0 0 18 16' aria-hidden='true'>
        <path d={isPass ? 'M2 9l5 5L16 2' : 'M3 2h12v12H3ZM3 14L15 2'} className={isPass ? 'd-wire' : 'd-edge'} />
      </svg>
      {say(isPass ? 'gear.pass' : 'gear.quarantine')}
    </span>
  )
}
