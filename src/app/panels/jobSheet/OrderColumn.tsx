/** Left column of the job sheet: what is known on paper. */
import type { Belief } from '../../../engine'
import { amperes, type Speaker, plain, say, timeOfDay } from '../../../text'
import { crewInOrder } from '../site/crewInOrder'
import { lineWords, networkFacts, neutralNotes, poleWords } from './networkWords'
import { protectionNotes, relaySetting } from './protectionWords'

export function OrderColumn({ belief, speaker }: { belief: Belief; speaker: Speaker }) {
  const { sheet, paper } = belief
  const facts = networkFacts(sheet, speaker)
  return (
    <>
      <h2 className='sec'>
        {say('job.order')}
        <span className='n'>{sheet.date}</span>
      </h2>
      <p className='ordertext'>{speaker.say('scenario.order')}</p>
      <dl className='form'>
        <dt>{say('facts.pole')}</dt>
        <dd>{poleWords(sheet)}</dd>
        <dt>{say('job.line')}</dt>
        <dd>{lineWords(sheet)}</dd>
        <dt>{say('job.permit')}</dt>
        <dd>{speaker.say(`permit.${paper.permit}`)}</dd>
      </dl>
      <h2 className='sec gap'>{say('job.protection')}</h2>
      <table>
        <thead>
          <tr>
            <th />
            <th className='num'>{say('job.overcurrent')}</th>
            <th className='num'>{say('job.earthFault')}</th>
            <th className='num'>{say('job.reclose')}</th>
          </tr>
        </thead>
        <tbody>
          {sheet.feeders.map((feeder) => (
            <tr key={feeder.id}>
              <td>{speaker.say(`thing.${feeder.id}`)}</td>
              <td className='num'>{relaySetting(feeder.overcurrent)}</td>
              <td className='num'>{relaySetting(feeder.earthFault)}</td>
              <td className='num'>
                {feeder.recloseDeadTimes.length === 0
                  ? say('job.none')
                  : feeder.recloseDeadTimes.map((time) => `${time} s`).join(', ')}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <Faults belief={belief} speaker={speaker} />
      <p className='note'>{[...protectionNotes(sheet.feeders, speaker), ...neutralNotes(sheet, speaker)].join(' ')}</p>
      {facts.length > 0 && (
        <>
          <h2 className='sec gap'>{say('network.on')}</h2>
          <dl className='form'>
            {facts.map(({ id, name, words }) => (
              <FactLine key={id} name={name} words={words} />
            ))}
          </dl>
        </>
      )}
      <h2 className='sec gap nature'>{say('job.ground')}</h2>
      <dl className='form nature'>
        {sheet.soil.layers.map((layer, i) => (
          <Layer key={layer.resistivity} name={layerName(i, layer.thickness)} value={layer.resistivity} />
        ))}
        <dt>{say('job.wind')}</dt>
        <dd>
          <span className='n'>{plain(sheet.weather.wind, 0)}</span> m/s,{' '}
          {say(sheet.weather.rain ? 'weather.rain' : 'weather.dry')}
          {sheet.weather.thunder ? `, ${say('weather.thunder')}` : ''}
        </dd>
      </dl>
      <h2 className='sec gap'>
        {say('facts.crew')}
        <span className='q'>
          {say('job.signed', {
            count: belief.persons.filter((person) => person.signedOn).length,
            all: belief.persons.length,
          })}
        </span>
      </h2>
      <dl className='form'>
        {crewInOrder(belief).map((person) => (
          <FactLine key={person.id} name={speaker.say(`person.${person.id}`)} words={signedAt(belief, person.id)} />
        ))}
      </dl>
    </>
  )
}

/** What a lead at the work has to stand, feeder by feeder. */
function Faults({ belief: { sheet }, speaker }: { belief: Belief; speaker: Speaker }) {
  const isOneWire = sheet.conductors.length === 1
  return (
    <table>
      <thead>
        <tr>
          <th>{say('job.fault')}</th>
          {!isOneWire && <th className='num'>{say('job.faultBetween')}</th>}
          <th className='num'>{say('job.earthFault')}</th>
        </tr>
      </thead>
      <tbody>
        {sheet.faults.map(({ feeder, between, toEarth }) => (
          <tr key={feeder}>
            <td>{speaker.say(`thing.${feeder}`)}</td>
            {!isOneWire && <td className='num'>{faultWords(between)}</td>}
            <td className='num'>{faultWords(toEarth)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** Nothing but capacitance brings it back: no figure to plan a lead by. */
const faultWords = ({ current, time }: { readonly current: number; readonly time: number }): string =>
  current === 0 ? '–' : say('job.faultFor', { current: amperes(current), time })

function layerName(index: number, thickness: number | undefined): string {
  if (index > 0) return say('job.soilBelow')
  return thickness ? say('job.soilTo', { depth: thickness }) : say('job.soil')
}

function Layer({ name, value }: { name: string; value: number }) {
  return (
    <>
      <dt>{name}</dt>
      <dd>
        <span className='n'>{plain(value, 0)}</span> Ωm
      </dd>
    </>
  )
}

function FactLine({ name, words }: { name: string; words: string }) {
  return (
    <>
      <dt>{name}</dt>
      <dd>{words}</dd>
    </>
  )
}

function signedAt(belief: Belief, who: string): string {
  const line = belief.evidence.findLast((it) => it.says === 'did.sign-on' && it.who === who)
  if (!line) return say('job.notSigned')
  return say('job.signedAt', { time: timeOfDay(belief.sheet.startsAt + line.at).slice(0, 5) })
}
