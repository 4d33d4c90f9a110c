/** The crew in elevation, and the way of a current through whom it reaches. North is to the left. */
import { Figure, type Joint } from './Figure'
import { type Scale, tenth } from './pen'
import type { SiteView } from './siteView'

/** The way of a current through a person. */
export interface BodyPath {
  readonly joints: readonly Joint[]
  readonly isHarm: boolean
  readonly words: string
}

interface PeopleProps {
  readonly site: SiteView
  readonly scale: Scale
  readonly width: number
  readonly paths?: ReadonlyMap<string, BodyPath>
}

export function PeopleElevation({ site, scale, width, paths }: PeopleProps) {
  const { x: X, y: Y } = scale
  return site.people
    .filter((person) => !person.isFar && Math.abs(person.at.y) < 7)
    .map((person, i) => {
      const aloft = person.height > 0.5
      const x = aloft ? X(-0.1) : Math.min(width - 20, Math.max(16, X(i * 0.35 - person.at.y)))
      const path = paths?.get(person.id)
      return (
        <g key={person.id} data-person={person.id}>
          <Figure
            x={x}
            y={Y(person.height)}
            size={scale.perMetre}
            posture={person.posture}
            isMirrored={aloft}
            hasBoots={person.hasBoots}
            {...(path ? { path: path.joints, pathColour: path.isHarm ? 'var(--live)' : 'var(--ink)' } : {})}
          />
          {path && (
            <text className='halo mid t-b' x={tenth(x - (aloft ? 90 : 0))} y={tenth(Y(person.height + 1.95))}>
              {path.words}
            </text>
          )}
        </g>
      )
    })
}
