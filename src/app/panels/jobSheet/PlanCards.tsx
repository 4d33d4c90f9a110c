/**
 * My plan: cards put together from the same pick lists as on the site, wrong combinations included; blank at the start.
 * Writing it down is an act; until then the cards are a pencil draft.
 */
import { useState } from 'react'
import type { Belief } from '../../../engine'
import { type Speaker, say } from '../../../text'
import { planChoices } from '../../stores/planChoices'
import { viewStore } from '../../stores/viewStore'
import { giveDraft } from '../site/giving'
import { thingName } from '../site/ActionSlip'

export function PlanCards({ belief, speaker }: { belief: Belief; speaker: Speaker }) {
  const written = belief.written.plan
  const [cards, setCards] = useState<readonly string[]>(typeof written === 'object' ? written : [])
  const [act, setAct] = useState('')
  const [item, setItem] = useState('')
  const [on, setOn] = useState('')
  const choices = planChoices(act)
  const name = (id: string) => thingName(speaker, belief, id)
  const words = (card: string) => {
    const [cardAct = '', cardItem = '', cardOn = ''] = card.split(':')
    return [speaker.say(`action.${cardAct}`), cardItem && name(cardItem), cardOn && name(cardOn)].filter(Boolean).join(', ')
  }
  return (
    <>
      <h2 className="sec gap">
        {say('plan.title')}
        <span className="q">{say('plan.count', { count: cards.length })}</span>
      </h2>
      <ol className="cards">
        {cards.map((card, i) => (
          <li key={`${i}${card}`}>
            <span className="n">{i + 1}</span>
            <span>{words(card)}</span>
            <button type="button" className="btn plain" aria-label={say('plan.remove', { number: i + 1 })} onClick={() => setCards(cards.filter((_, at) => at !== i))}>
              {say('plan.rub')}
            </button>
          </li>
        ))}
      </ol>
      <form
        className="newcard"
        onSubmit={(event) => {
          event.preventDefault()
          if (act !== '') setCards([...cards, `${act}:${item}:${on}`])
        }}
      >
        <Picker label={say('plan.act')} value={act} onChange={setAct} options={planChoices('').acts.map((id) => [id, speaker.say(`action.${id}`)])} />
        <Picker label={say('plan.item')} value={item} onChange={setItem} options={choices.items.map((id) => [id, name(id)])} />
        <Picker label={say('plan.thing')} value={on} onChange={setOn} options={choices.things.map((id) => [id, name(id)])} />
        <button type="submit" className="btn" disabled={act === ''}>
          {say('plan.add')}
        </button>
        <button
          type="button"
          className="btn"
          disabled={cards.length === 0}
          onClick={() => giveDraft({ do: 'write-plan', values: { cards } }, viewStore.getState().persons.slice(0, 1))}
        >
          {say('plan.write')}
        </button>
      </form>
    </>
  )
}

interface PickerProps {
  readonly label: string
  readonly value: string
  readonly options: readonly (readonly [string, string])[]
  readonly onChange: (value: string) => void
}

function Picker({ label, value, options, onChange }: PickerProps) {
  const sorted = [...options].sort((a, b) => (a[1] < b[1] ? -1 : 1))
  return (
    <label className="field">
      {label}
      <select className="entry" value={value} onChange={(event) => onChange(event.target.value)}>
        <option value="">{say('plan.nothing')}</option>
        {sorted.map(([id, words]) => (
          <option key={id} value={id}>
            {words}
          </option>
        ))}
      </select>
    </label>
  )
}
