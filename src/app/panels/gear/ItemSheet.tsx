/** The item in the hands: its drawing, its label once it has been turned up, what looks and tests told, two equal buttons. */
import { type Belief, type Evidence, gearCatalogue, type ItemBelief } from '../../../engine'
import { type Speaker, say, timeOfDay } from '../../../text'
import { lettersOf } from '../site/lettersOf'
import { chooseThing } from '../../stores/viewStore'
import { findFinding } from '../../stores/findFinding'
import { GearDrawing } from './GearDrawing'
import { judge, turnOver } from './turnOver'

interface ItemSheetProps {
  readonly item: ItemBelief
  /** What the hand reaches for when this one has been judged. */
  readonly next: ItemBelief | null
  readonly belief: Belief
  readonly speaker: Speaker
}

export function ItemSheet({ item, next, belief, speaker }: ItemSheetProps) {
  const act = (run: () => void) => () => {
    chooseThing(item.id)
    run()
  }
  return (
    <>
      <div className='itemhead'>
        <h2 className='head'>
          <span className='n'>{item.id}</span> {speaker.say(`gear.${item.type}`)}
        </h2>
        <div className='seg'>
          <button type='button' className='btn' onClick={act(() => turnOver('look', item.id))}>
            {say('gear.look')} <kbd>L</kbd>
          </button>
          <button type='button' className='btn' onClick={act(() => turnOver('read-label', item.id))}>
            {say('gear.labelButton')} <kbd>R</kbd>
          </button>
          <button type='button' className='btn' onClick={act(() => turnOver('test-item', item.id))}>
            {say('gear.test')} <kbd>T</kbd>
          </button>
        </div>
      </div>
      <div className='itembody'>
        <GearDrawing type={item.type} name={speaker.say(`gear.${item.type}`)} seen={seenOn(item)} />
        <Tag item={item} speaker={speaker} />
      </div>
      <div className='itemfoot'>
        <div className='stack'>
          <Told item={item} belief={belief} speaker={speaker} />
          {belief.sheet.purpose === 'practise' && <p className='note'>{criterionOf(item.type, speaker)}</p>}
        </div>
        <div className='stack'>
          <p className='note'>{say('gear.date', { date: belief.sheet.date })}</p>
          {next && <p className='note'>{say('gear.next', { item: next.id })}</p>}
          {!item.bookedOut && (
            <button type='button' className='btn' onClick={act(() => turnOver('book-out', item.id))}>
              {say('gear.bookOut')} <kbd>B</kbd>
            </button>
          )}
          <div className='judge'>
            <button type='button' className='btn' onClick={act(() => judge(item, 'quarantine'))}>
              {say('gear.toQuarantine')} <kbd>Q</kbd>
            </button>
            <button type='button' className='btn' onClick={act(() => judge(item, 'pass'))}>
              {say('gear.toPass')} <kbd>P</kbd>
            </button>
          </div>
          <p className='note'>{say('gear.quarantineNote')}</p>
        </div>
      </div>
    </>
  )
}

const seenOn = ({ evidence }: ItemBelief): readonly string[] => [
  ...new Set(evidence.flatMap((it) => findFinding(it) ?? [])),
]

/** When it passes, and on what that rests: the same for the whole and the broken, so it gives nothing away. */
function criterionOf(type: string, speaker: Speaker): string {
  const passes = gearCatalogue.get(type)?.passes
  const rests = passes?.sure === 'practice' ? 'passes.practice' : 'passes.source'
  return say('passes.when', {
    criterion: speaker.say(`passes.${type}`),
    rests: speaker.say(rests, {
      source: passes?.source ?? '',
      sure: speaker.say(`passes.${passes?.sure ?? 'memory'}`),
    }),
  })
}

function Tag({ item, speaker }: { item: ItemBelief; speaker: Speaker }) {
  return (
    <div className='tag'>
      <div className='hole' />
      <p className='n tagid'>{item.id}</p>
      {item.label === null ? (
        <p className='q'>{say('gear.unread')}</p>
      ) : (
        <ul>
          {Object.entries(item.label).map(([name, value]) => (
            <li key={name}>{speaker.say(`label.${name}`, { value })}</li>
          ))}
        </ul>
      )}
    </div>
  )
}

function Told({ item, belief, speaker }: Omit<ItemSheetProps, 'next'>) {
  const lines = item.evidence.filter((it) => it.by !== 'do')
  return (
    <div className='scroll'>
      <table>
        <thead>
          <tr>
            <th>{say('gear.time')}</th>
            <th>{say('gear.by')}</th>
            <th>{say('gear.found')}</th>
          </tr>
        </thead>
        <tbody>
          {lines.length === 0 && (
            <tr>
              <td colSpan={3} className='q'>
                {say('gear.nothingYet')}
              </td>
            </tr>
          )}
          {lines.map((line, i) => (
            <tr key={i}>
              <td className='n stamp'>{timeOfDay(belief.sheet.startsAt + line.at).slice(0, 5)}</td>
              <td>{lettersOf(belief, line.who)}</td>
              <td>{toldWords(line, speaker)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

const toldWords = (line: Evidence, speaker: Speaker): string => speaker.say(line.says, line.values)
