/**
 * The crew seen from above. Flags of people who stand together are set out in one column beside them, in the order in
 * which they stand, each with its leader: no flag lies on a figure or on another flag.
 */
import { type Scale, tenth } from './pen'
import { PersonFlag, PersonPlan, flagWidth } from './PersonPlan'
import type { PlanFrame } from './planFrame'
import type { SiteView } from './siteView'

type PersonView = SiteView['people'][number]

interface Placed {
  readonly person: PersonView
  readonly x: number
  readonly y: number
}

/** Between the middles of two flags of a column, pixels. */
const pitch = 23
/** People nearer than this share a column of flags, pixels. */
const together = 56
const margin = 12

export interface PeoplePlanProps {
  readonly people: SiteView['people']
  readonly scale: Scale
  readonly frame: PlanFrame
  readonly selected: readonly string[]
}

export function PeoplePlan({ people, scale, frame, selected }: PeoplePlanProps) {
  const near = people.filter((person) => !person.isFar)
  const placed = near.map((person, i) => place(person, near.slice(0, i), scale))
  const flags = groups(placed).flatMap((group) => flagsOf(group, frame))
  return (
    <g>
      {flags.map(({ person, x, y, left, middle, isLeft }) => (
        <path
          key={person.id}
          d={`M${tenth(x)} ${tenth(y)}L${tenth(isLeft ? left + flagWidth(person.letters) : left)} ${tenth(middle)}`}
          className='d-thin'
        />
      ))}
      {placed.map(({ person, x, y }) => (
        <PersonPlan key={person.id} x={x} y={y} facing={(Math.atan2(-person.at.x, -person.at.y) * 180) / Math.PI} />
      ))}
      {flags.map(({ person, left, middle }) => (
        <PersonFlag
          key={person.id}
          left={left}
          middle={middle}
          letters={person.letters}
          isSelected={selected.includes(person.id)}
        />
      ))}
    </g>
  )
}

/** Figures on the same spot are drawn side by side; whoever is up the pole stands off its head. */
function place(person: PersonView, before: readonly PersonView[], scale: Scale): Placed {
  const beside = before.filter((other) => isClose(other, person, 16 / scale.perMetre)).length
  const isAloft = person.height > 0.5
  return {
    person,
    x: scale.x(person.at.x) + (isAloft ? -9 : beside * 13),
    y: scale.y(person.at.y) + (isAloft ? 3 : beside * 5),
  }
}

const isClose = (a: PersonView, b: PersonView, metres: number): boolean =>
  (a.at.x - b.at.x) ** 2 + (a.at.y - b.at.y) ** 2 < metres * metres

/** Whoever stands within reach of one of a group belongs to it. */
function groups(placed: readonly Placed[]): readonly (readonly Placed[])[] {
  let found: Placed[][] = []
  for (const each of placed) {
    const joins = (group: readonly Placed[]) =>
      group.some((it) => (it.x - each.x) ** 2 + (it.y - each.y) ** 2 < together * together)
    found = [...found.filter((group) => !joins(group)), [...found.filter(joins).flat(), each]]
  }
  return found
}

interface Flagged extends Placed {
  readonly left: number
  readonly middle: number
  readonly isLeft: boolean
}

function flagsOf(group: readonly Placed[], frame: PlanFrame): readonly Flagged[] {
  const widest = Math.max(...group.map((it) => flagWidth(it.person.letters)))
  const [west, east] = [Math.min(...group.map((it) => it.x)), Math.max(...group.map((it) => it.x))]
  const isAloft = group.every((it) => it.person.height > 0.5)
  const isLeft = west - 30 - widest > 0 && (isAloft || east + 30 + widest > frame.width * 0.9)
  const down = [...group].sort((a, b) => a.y - b.y || a.x - b.x)
  const long = (down.length - 1) * pitch
  const centre = down.reduce((sum, it) => sum + it.y, 0) / down.length + (isAloft ? 30 : 0)
  const top = Math.min(Math.max(centre - long / 2, margin), frame.height - margin - long)
  return down.map((it, i) => ({
    ...it,
    isLeft,
    left: isLeft ? west - 26 - flagWidth(it.person.letters) : east + 26,
    middle: top + i * pitch,
  }))
}
