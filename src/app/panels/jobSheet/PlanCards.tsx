/**
 * My plan: cards put together from the same pick lists as on the site, wrong combinations included; blank at the start.
 * Three columns: act, with what, where. A pick in the last column adds the card; the first two stay for the next one.
 * Writing it down is an act; until then the cards are a pencil draft.
 */
import { type KeyboardEvent, useState } from 'react'
import type { Belief } from '../../../engine'
import { type Speaker, say } from '../../../text'
import { isGroup, membersOf } from '../../stores/groups'
import { planChoices } from '../../stores/planChoices'
import { viewStore } from '../../stores/viewStore'
import { thingName } from '../site/ActionSlip'
import { giveDraft } from '../site/giving'

export function PlanCards({ belief, speaker }: { belief: Belief; speaker: Speaker }) {
  const written = belief.written.plan
  const [cards, setCards] = useState<readonly string[]>(typeof written === 'object' ? written : [])
  const [act, setAct] = useState('')
  const [item, setItem] = useState('')
  const choices = planChoices(act)
  const name = (id: string) => thingName(speaker, belief, id)
  const words = (card: string) => {
    const [cardAct = '', cardItem = '', cardOn = ''] = card.split(':')
    return [speaker.say(`action.${cardAct}`), cardItem && cardItem, cardOn && name(cardOn)].filter(Boolean).join(', ')
  }
  return (
    <div className='stack plan grow'>
      <h2 className='sec gap'>
        {say('plan.title')}
        <span className='q'>{say('plan.count', { count: cards.length })}</span>
      </h2>
      <ol className='cards scroll'>
        {cards.map((card, i) => (
          <li key={`${i}${card}`}>
            <span className='n'>{i + 1}</span>
            <span>{words(card)}</span>
            <button
              type='button'
              className='btn plain'
              aria-label={say('plan.remove', { number: i + 1 })}
              onClick={() => setCards(cards.filter((_, at) => at !== i))}
            >
              {say('plan.rub')}
            </button>
          </li>
        ))}
      </ol>
      <div className='picklists grow' onKeyDown={walk}>
        <PickList
          label={say('plan.act')}
          chosen={act}
          options={choices.acts.map((id) => [id, speaker.say(`action.${id}`)])}
          onPick={(id) => {
            setAct(id)
            if (!planChoices(id).items.includes(item)) setItem('')
          }}
        />
        <PickList
          label={say('plan.item')}
          chosen={item}
          options={choices.items.map((id) => [id, name(id)])}
          onPick={setItem}
        />
        <PickList
          label={say('plan.thing')}
          chosen=''
          options={choices.things.map((id) => [id, name(id)])}
          onPick={(on) => setCards([...cards, ...membersIn(belief, on).map((each) => `${act}:${item}:${each}`)])}
        />
      </div>
      <div className='foot'>
        <button
          type='button'
          className='btn'
          data-plan-write
          disabled={cards.length === 0}
          onClick={() => giveDraft({ do: 'write-plan', values: { cards } }, viewStore.getState().persons.slice(0, 1))}
        >
          {say('plan.write')}
        </button>
      </div>
    </div>
  )
}

/** A heading stands for each of its things: a card each. */
const membersIn = (belief: Belief, on: string): readonly string[] => (isGroup(on) ? membersOf(belief, on) : [on])

interface PickListProps {
  readonly label: string
  readonly chosen: string
  readonly options: readonly (readonly [string, string])[]
  readonly onPick: (id: string) => void
}

function PickList({ label, chosen, options, onPick }: PickListProps) {
  const sorted = [...options].sort((a, b) => (a[1] < b[1] ? -1 : 1))
  return (
    <div className='scroll picklist' role='group' aria-label={label}>
      <p className='note'>{label}</p>
      {sorted.map(([id, words]) => (
        <button
          key={id}
          type='button'
          className='pick'
          aria-pressed={id === chosen}
          data-pick={id}
          onClick={() => onPick(id)}
        >
          {words}
        </button>
      ))}
    </div>
  )
}

/** Arrows walk in a column and between the columns. */
function walk(event: KeyboardEvent<HTMLElement>): void {
  const { target } = event
  const column = target instanceof HTMLElement ? target.closest('.picklist') : null
  if (!(target instanceof HTMLElement) || !column) return
  const inColumn = (of: Element | null | undefined) => [...(of?.querySelectorAll<HTMLElement>('.pick') ?? [])]
  const row = inColumn(column).indexOf(target)
  const next: Record<string, () => HTMLElement | undefined> = {
    ArrowDown: () => inColumn(column)[row + 1],
    ArrowUp: () => inColumn(column)[row - 1],
    ArrowRight: () => inColumn(column.nextElementSibling)[0],
    ArrowLeft: () => inColumn(column.previousElementSibling)[0],
  }
  const to = next[event.key]?.()
  if (!to) return
  event.preventDefault()
  to.focus()
}
