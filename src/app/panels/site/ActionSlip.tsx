/**
 * What the chosen thing affords to the chosen people: a plate with the act the hand would do, and below it every act by
 * name, A to Z; impossible ones struck through with the world's reason. With several people marked, an order goes to
 * each of them who can. Left and right go to the next person of the crew. Title, close and the button of an open form stay
 * in sight however long the list is.
 */
import { type KeyboardEvent, useEffect, useMemo } from 'react'
import { useStore } from 'zustand'
import type { Belief } from '../../../engine'
import { type Speaker, say, timeOfDay } from '../../../text'
import { type Afford, type Field, affordsOf, findHandAct, findSendingUp } from '../../stores/affords'
import { isGroup, kindOf } from '../../stores/groups'
import { showOffer } from '../../stores/formStore'
import { jobStore } from '../../stores/jobStore'
import { choosePersons, closeSheet, isSlipOut, openSheet, putSlipAway, viewStore } from '../../stores/viewStore'
import { useBelief } from '../useBelief'
import { useSpeaker } from '../useSpeaker'
import { ActForm } from './ActForm'
import { crewInOrder } from './crewInOrder'
import { choiceWord } from './FieldEntry'
import { focusActs, focusTree } from './focus'
import { actOnThing, giveAfford, sendUp } from './giving'
import { lettersOf } from './lettersOf'

/** One act of the slip, and those of the chosen people who can do it. */
interface Line {
  readonly afford: Afford
  readonly people: readonly string[]
}

/** @param top pixels from the top of the drawings that something else takes; under the plan when not given */
export function ActionSlip({ top }: { top?: number | undefined }) {
  const belief = useBelief()
  const speaker = useSpeaker()
  const persons = useStore(viewStore, (view) => view.persons)
  const thing = useStore(viewStore, (view) => view.thing)
  const sheet = useStore(viewStore, (view) => view.sheet)
  const busy = useStore(jobStore, (job) => job.busy)
  const isAnything = useStore(viewStore, isSlipOut)
  // Belief changes with every order and every second: what can be done may have changed with it.
  const lines = useMemo(
    () => (belief && isAnything ? linesOf(persons, thing, speaker) : []),
    [belief, persons, thing, speaker, isAnything],
  )
  const hands = useMemo(
    () =>
      belief && isAnything ? persons.flatMap((who) => [findHandAct(who, thing)].filter((it) => it !== undefined)) : [],
    [belief, persons, thing, isAnything],
  )
  const sending = useMemo(() => (belief ? findSendingUp(persons, thing) : undefined), [belief, persons, thing])
  useOffer(lines, speaker)
  const until = busy.find((it) => persons.includes(it.who))?.end
  if (!isAnything) return null
  return (
    <section
      className='slip'
      aria-label={say('slip.label')}
      style={top === undefined ? undefined : { top, maxHeight: `calc(100% - ${top + 8}px)` }}
      onKeyDown={(event) => onKeyDown(event, belief)}
    >
      <header>
        <h3>{thingName(speaker, belief, thing)}</h3>
        <span className='q'>{persons.map((id) => lettersOf(belief, id)).join(', ')}</span>
        <CloseSlip />
      </header>
      {until !== undefined && (
        <p className='note slipnote'>{say('slip.busy', { time: timeOfDay(belief.sheet.startsAt + until) })}</p>
      )}
      {hands.length > 0 && (
        <button type='button' className='act plate' data-plate onClick={() => void actOnThing()}>
          <span className='nm'>
            <kbd>Enter</kbd> {[...new Set(hands.map((it) => actName(speaker, it)))].join('; ')}
          </span>
        </button>
      )}
      <div className='acts' role='group' aria-label={say('slip.acts')}>
        {sending && (
          <button type='button' className='act' data-act='send-up:' onClick={() => sendUp(sending)}>
            <span className='nm'>
              {say('slip.sendUp', { ties: lettersOf(belief, sending.ties), hauls: lettersOf(belief, sending.hauls) })}
            </span>
          </button>
        )}
        {lines.map((line) => (
          <ActLine
            key={line.afford.key}
            line={line}
            isOpen={sheet?.act === line.afford.key}
            belief={belief}
            speaker={speaker}
            chosen={persons}
          />
        ))}
        {lines.length === 0 && <p className='note slipnote'>{say('slip.none')}</p>}
      </div>
    </section>
  )
}

function CloseSlip() {
  const close = () => {
    putSlipAway()
    focusTree()
  }
  return (
    <button type='button' className='slipclose' aria-label={say('app.close')} title={say('app.close')} onClick={close}>
      <svg width='14' height='14' viewBox='0 0 14 14' aria-hidden='true'>
        <path d='M1 1l12 12M13 1l-12 12' className='d-edge' />
      </svg>
    </button>
  )
}

/** Acts of all chosen people, each once; refused only when it is so for all of them. */
function linesOf(persons: readonly string[], thing: string | null, speaker: Speaker): readonly Line[] {
  const found = new Map<string, { afford: Afford; people: string[] }>()
  for (const who of persons) {
    for (const afford of affordsOf(who, thing)) {
      const before = found.get(afford.key)
      const people = [...(before?.people ?? []), ...(afford.refusal ? [] : [who])]
      found.set(afford.key, { afford: before && !before.afford.refusal ? before.afford : afford, people })
    }
  }
  return [...found.values()].sort((a, b) => (actName(speaker, a.afford) < actName(speaker, b.afford) ? -1 : 1))
}

/** The ways of a lead are shown in the picture, too, to be chosen there by hand. */
function useOffer(lines: readonly Line[], speaker: Speaker): void {
  useEffect(() => {
    const line = lines.find(({ afford }) => !afford.refusal && afford.fields.length === 1 && routeOf(afford))
    const [route, item] = [line && routeOf(line.afford), line?.afford.item]
    if (!line || !route || !item) return showOffer(null)
    const { afford, people } = line
    const ways = route.choices.map((choice) => ({ choice, name: choiceWord(speaker, afford.act, route.name, choice) }))
    showOffer({ item, ways, give: (choice) => giveAfford(afford, people, { [route.name]: choice }) })
    return () => showOffer(null)
  }, [lines, speaker])
}

const routeOf = ({ fields }: Afford): Field | undefined =>
  fields.find(({ name, kind }) => name === 'route' && kind === 'one')

interface ActLineProps {
  readonly line: Line
  readonly isOpen: boolean
  readonly belief: Belief
  readonly speaker: Speaker
  readonly chosen: readonly string[]
}

function ActLine({ line: { afford, people }, isOpen, belief, speaker, chosen }: ActLineProps) {
  const title = actName(speaker, afford)
  const only =
    chosen.length > 1 && people.length < chosen.length
      ? ` · ${people.map((id) => lettersOf(belief, id)).join(', ')}`
      : ''
  if (afford.refusal)
    return (
      <button type='button' className='act' data-act={afford.key} aria-disabled>
        <span className='nm'>{title}</span>
        <span className='q'>{refusalWords(speaker, afford.refusal)}</span>
      </button>
    )
  const [field] = afford.fields
  const ways = waysOf(afford.fields)
  if (ways.length > 0)
    return ways.map((values) => (
      <button
        key={Object.values(values).join()}
        type='button'
        className='act'
        data-act={afford.key}
        data-choice={Object.values(values).join(' ')}
        data-people={people.join(' ')}
        onClick={() => giveAfford(afford, people, values)}
      >
        <span className='nm'>
          {title}:{' '}
          {Object.entries(values)
            .map(([name, choice]) => lower(choiceWord(speaker, afford.act, name, choice)))
            .join(', ')}
          {only}
        </span>
      </button>
    ))
  if (isOpen && field)
    return (
      <ActForm
        afford={afford}
        title={title + only}
        speaker={speaker}
        onGive={(values) => giveAfford(afford, people, values)}
      />
    )
  return (
    <button
      type='button'
      className='act'
      data-act={afford.key}
      data-people={people.join(' ')}
      onFocus={field ? () => openSheet(afford.key) : undefined}
      onClick={() => (field ? openSheet(afford.key) : giveAfford(afford, people))}
    >
      <span className='nm'>
        {title}
        {only}
      </span>
    </button>
  )
}

/** More than so many ways stand as a form. */
const mostWays = 8

/** Every way to say an act that asks for nothing but a choice or two: a line each. */
function waysOf(fields: readonly Field[]): readonly Readonly<Record<string, string>>[] {
  if (fields.length === 0 || fields.some((field) => field.kind !== 'one')) return []
  const ways = fields.reduce<readonly Readonly<Record<string, string>>[]>(
    (before, field) => before.flatMap((way) => field.choices.map((choice) => ({ ...way, [field.name]: choice }))),
    [{}],
  )
  return ways.length <= mostWays || fields.length === 1 ? ways : []
}

const lower = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1)

export function actName(speaker: Speaker, afford: Afford): string {
  const name = speaker.say(`action.${afford.act}`)
  return afford.item && afford.item !== afford.on ? `${name}, ${afford.item}` : name
}

export const refusalWords = (
  speaker: Speaker,
  refusal: { code: string; values: Readonly<Record<string, string | number>> },
) => speaker.say(`refusal.${refusal.code.split('/')[1]}`, refusal.values)

export function thingName(speaker: Speaker, belief: Pick<Belief, 'items'>, thing: string | null): string {
  if (thing === null) return say('tree.crew')
  const kind = kindOf(thing)
  if (kind !== undefined) return speaker.say('all.kind', { kind })
  if (isGroup(thing)) return speaker.say(thing.startsWith('all/switch') ? 'all.blades' : `all.${thing.slice(4)}`)
  const item = belief.items.find((it) => it.id === thing)
  return item ? `${item.id} ${speaker.say(`gear.${item.type}`)}` : speaker.say(`thing.${thing}`)
}

/** Where the focus can stand on the slip, from above down. */
const stops = 'button.act, .act.open input, .act.open .pick, .act.open [data-aim], .act.open .btn.go'

/** Up and down walk along the acts, left and right to another person, Escape goes back to the list. */
function onKeyDown(event: KeyboardEvent<HTMLElement>, belief: Belief): void {
  if (event.key === 'Escape') {
    event.stopPropagation()
    closeSheet()
    focusTree()
    return
  }
  const { target } = event
  if (!(target instanceof HTMLElement) || event.altKey || event.ctrlKey) return
  if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
    event.preventDefault()
    const all = [...event.currentTarget.querySelectorAll<HTMLElement>(stops)]
    all[all.indexOf(target) + (event.key === 'ArrowDown' ? 1 : -1)]?.focus()
  } else if ((event.key === 'ArrowLeft' || event.key === 'ArrowRight') && !target.matches('input')) {
    event.preventDefault()
    const crew = crewInOrder(belief).map((person) => person.id)
    const here = crew.indexOf(viewStore.getState().persons[0] ?? '')
    const next = crew[(here + (event.key === 'ArrowRight' ? 1 : crew.length - 1)) % crew.length]!
    choosePersons([next])
    focusActs()
  }
}
