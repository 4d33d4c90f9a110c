/** What everybody may know of a scenario before the folder is opened. */
import { plain, say } from '../../../text'
import { requireScenario } from '../../storage/library'
import { speakerOf } from '../useSpeaker'

export function ScenarioFacts({ scenario }: { scenario: string }) {
  const base = requireScenario(scenario)
  const speaker = speakerOf(scenario, '')
  const [upper, lower] = base.soil.layers
  return (
    <>
      <p className='gap'>{speaker.say('scenario.order')}</p>
      <dl className='form gap'>
        <dt>{say('facts.line')}</dt>
        <dd>
          {say('facts.lineValue', {
            kilovolts: plain((base.feeders[0]?.voltage ?? 0) / 1000, 1),
            switches: base.switches.map((it) => it.label).join(', '),
          })}
        </dd>
        <dt>{say('facts.pole')}</dt>
        <dd>{say('facts.poleValue', { number: base.pole.number, height: base.pole.height + base.pole.buttLength })}</dd>
        <dt className='nature'>{say('facts.soil')}</dt>
        <dd className='nature'>
          {lower && upper?.thickness
            ? say('facts.soilTwo', { upper: upper.resistivity, depth: upper.thickness, lower: lower.resistivity })
            : say('facts.soilOne', { upper: upper?.resistivity ?? 0 })}
        </dd>
        <dt>{say('facts.crew')}</dt>
        <dd>{say('facts.crewValue', { count: base.crew.length })}</dd>
        <dt>{say('facts.gear')}</dt>
        <dd>{say('facts.gearValue', { count: base.items.length })}</dd>
      </dl>
    </>
  )
}
