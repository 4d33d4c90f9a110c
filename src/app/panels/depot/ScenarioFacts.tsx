/** What everybody may know of a scenario before the folder is opened. */
import { say } from '../../../text/front'
import { plain, timeOfDay } from '../../../text/quantities'
import type { FolderCard } from '../../storage/makeCard'

export function ScenarioFacts({ card }: { card: FolderCard }) {
  const [upper, lower] = card.soil
  return (
    <div>
      <p className='gap'>{card.words['scenario.order']}</p>
      <dl className='form gap'>
        <dt>{say('facts.line')}</dt>
        <dd>
          {say('facts.lineValue', {
            kilovolts: plain(card.voltage / 1000, 2),
            wires: card.wires,
            switches: card.switches.join(', '),
          })}
        </dd>
        <dt>{say('facts.pole')}</dt>
        <dd>
          {say('facts.poleLength', {
            number: card.pole,
            kind: say(`pole.${card.poleKind}`),
            length: card.poleLength,
          })}
        </dd>
        {card.traits.length > 0 && (
          <>
            <dt>{say('facts.traits')}</dt>
            <dd>{traitWords(card)}</dd>
          </>
        )}
        <dt>{say('facts.day')}</dt>
        <dd>{`${card.date}, ${timeOfDay(card.startsAt).slice(0, 5)}`}</dd>
        <dt className='nature'>{say('facts.soil')}</dt>
        <dd className='nature'>
          {lower && upper?.thickness
            ? say('facts.soilTwo', { upper: upper.resistivity, depth: upper.thickness, lower: lower.resistivity })
            : say('facts.soilOne', { upper: upper?.resistivity ?? 0 })}
        </dd>
        <dt>{say('facts.crew')}</dt>
        <dd>{say('facts.crewValue', { count: card.crew })}</dd>
        <dt>{say('facts.gear')}</dt>
        <dd>{say('facts.gearValue', { count: card.items })}</dd>
      </dl>
    </div>
  )
}

/** What the place has, in the order of the list's own choices. */
export function traitWords({ traits }: FolderCard): string {
  const told = traits.map((it) => say(`trait.${it}`)).join(', ')
  return told.charAt(0) + told.slice(1).toLowerCase()
}
