/** The plan on which the trainee marks what can hurt. Every object of the place is a candidate, harmless ones too. */
import { useState } from 'react'
import type { Belief } from '../../../engine'
import { type Speaker, say } from '../../../text'
import { SitePlan } from '../drawing/SitePlan'
import { Aim, HazardMark } from '../drawing/Marks'
import type { Scale } from '../drawing/pen'
import { viewOfSite } from '../drawing/viewOfSite'
import { PlacePlan } from './PlacePlan'
import { giveDraft } from '../site/giving'
import { viewStore } from '../../stores/viewStore'

const markedHazards = (belief: Belief): readonly string[] => {
  const { hazards } = belief.written
  return typeof hazards === 'object' ? hazards : []
}

export function HazardPlan({ belief, speaker }: { belief: Belief; speaker: Speaker }) {
  const [aim, setAim] = useState<string | null>(null)
  const marked = markedHazards(belief)
  const { hazards } = belief.sheet
  const mark = (id: string) =>
    giveDraft({ do: 'mark-hazard', on: id, values: {} }, viewStore.getState().persons.slice(0, 1))
  return (
    <>
      <h2 className='sec gap'>
        {say('job.plan')}
        <span className='q'>{say('job.marked', { count: marked.length })}</span>
      </h2>
      <SitePlan
        site={viewOfSite(belief)}
        frame={{ width: 616, height: 330, perMetre: 9.6, origin: [200, 170] }}
        selectedPersons={[]}
        title={say('job.planTitle')}
        onPoint={(at) => setAim(nearest(belief, at))}
      >
        {(scale) => (
          <>
            <PlacePlan belief={belief} speaker={speaker} scale={scale} width={616} height={330} />
            {hazards.map(({ id, at }) => (
              <Spot
                key={id}
                at={placeOnSheet(at, scale)}
                label={speaker.say(`thing.${id}`)}
                number={marked.indexOf(id) + 1}
                isAimed={aim === id}
              />
            ))}
          </>
        )}
      </SitePlan>
      <div className='hazards' role='group' aria-label={say('job.plan')}>
        {hazards.map(({ id }) => (
          <button
            key={id}
            type='button'
            className='pick'
            role='checkbox'
            aria-checked={marked.includes(id)}
            data-hazard={id}
            onFocus={() => setAim(id)}
            onClick={() => !marked.includes(id) && mark(id)}
          >
            <span className='box' />
            {speaker.say(`thing.${id}`)}
          </button>
        ))}
      </div>
    </>
  )
}

/** What lies beyond the sheet is drawn at its edge. */
function placeOnSheet(at: { x: number; y: number }, scale: Scale): readonly [number, number] {
  return [Math.min(590, Math.max(20, scale.x(at.x))), Math.min(312, Math.max(20, scale.y(at.y)))]
}

function nearest(belief: Belief, point: { x: number; y: number }): string | null {
  const far = (at: { x: number; y: number }) => (at.x - point.x) ** 2 + (at.y - point.y) ** 2
  return [...belief.sheet.hazards].sort((a, b) => far(a.at) - far(b.at))[0]?.id ?? null
}

function Spot({
  at: [x, y],
  label,
  number,
  isAimed,
}: {
  at: readonly [number, number]
  label: string
  number: number
  isAimed: boolean
}) {
  return (
    <g>
      {number > 0 ? (
        <HazardMark x={x} y={y} label={String(number)} />
      ) : (
        <circle cx={x} cy={y} r='4' className='d-edge' style={{ fill: 'var(--field)' }} />
      )}
      {isAimed && (
        <>
          <Aim x={x} y={y} />
          <text x={x} y={y > 40 ? y - 28 : y + 38} className='t-b halo mid'>
            {label}
          </text>
        </>
      )}
    </g>
  )
}
