/** The crew in elevation, and the way of a current through whom it reaches. North is to the left. */
import { Figure, type Joint } from './Figure'
import { PersonFlag, flagWidth } from './PersonPlan'
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
  const shown = site.people
    .filter((person) => !person.isFar && Math.abs(person.at.y) < 7)
    .map((person, i) => {
      const aloft = person.height > 0.5
      return { person, aloft, x: aloft ? X(-0.1) : Math.min(width - 20, Math.max(16, X(i * 0.35 - person.at.y))) }
    })
  const flags = flagsOf(
    shown.map(({ person, aloft, x }) => ({
      person,
      x: aloft ? x + 40 : x,
      y: Y(person.height + (aloft ? 1.2 : 1.95)),
    })),
  )
  return shown.map(({ person, aloft, x }, i) => {
    const path = paths?.get(person.id)
    const flag = flags[i]!
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
        <PersonFlag left={flag.left} middle={flag.middle} letters={person.letters} isSelected={false} />
        {path && (
          <text className='halo mid t-b' x={tenth(x - (aloft ? 90 : 0))} y={tenth(flag.middle - 15)}>
            {path.words}
          </text>
        )}
      </g>
    )
  })
}

interface Flagged {
  readonly person: SiteView['people'][number]
  /** Of the flag's middle. */
  readonly x: number
  readonly y: number
}

/** Over the heads; of people who stand together one above the other. */
function flagsOf(shown: readonly Flagged[]): readonly { left: number; middle: number }[] {
  const placed: { left: number; middle: number; right: number }[] = []
  for (const { person, x, y } of shown) {
    const width = flagWidth(person.letters)
    const [left, right] = [x - width / 2, x + width / 2]
    let middle = y - 6
    while (placed.some((it) => left < it.right && right > it.left && Math.abs(it.middle - middle) < 22)) middle -= 22
    placed.push({ left, middle, right })
  }
  return placed
}
