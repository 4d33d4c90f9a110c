/**
 * A wooden pole as a ladder by length: so many ohm a metre by moisture and treatment, a film of rain beside it. Its rungs
 * are where anything meets it, and each metre; a body meets the nearest one. The ohm a metre are the middle of the
 * working ranges of the physics reference 8.1 (from memory, low confidence: they vary from pole to pole tenfold).
 */
import { ln, PI } from '../../math/portable'
import type { Element } from '../../physics/network'
import type { Leg, WoodMoisture, WoodPole, WoodTreatment } from '../../site/pole'
import type { Scenario } from '../../site/scenario'
import { feetAt, thighAt } from '../../site/stations'
import { resistor } from './parts'

export const buttNode = 'butt'

const perMetre: Readonly<Record<WoodTreatment, Readonly<Record<WoodMoisture, number>>>> = {
  oil: { dry: 1e6, damp: 30_000, soaked: 4_500 },
  salt: { dry: 20_000, damp: 4_500, soaked: 1_000 },
}

/** A film of 0.1 mm of dirty rain, 0.06 S/m, round a pole of 0.27 m: ohm a metre (own choice). */
const wetFilm = 200_000

/** From the ground line the current is in the soil within this much of the butt, metres (own choice). */
const intoGround = 0.25

/** Ohm a metre, the wet surface beside it. */
export function woodPerMetre({ moisture, treatment, surface, resistance }: WoodPole): number {
  const wood = resistance ?? perMetre[treatment][moisture]
  return surface === 'wet' ? (wood * wetFilm) / (wood + wetFilm) : wood
}

/**
 * From a patch of `area` m² on the pole to the rung, ohm: a disc on wood, ρ/4b, beside the film where the surface is wet. In
 * the film it is a source on a sheet rolled to the pole's radius r, φ = −(σI/2π)·ln|2 sinh(z/2r)| with σ = 2πr · film a
 * metre: beyond what the film's own length takes there is film · r · ln(r/b), and nothing where b reaches r.
 */
export function spreadingInWood(made: WoodPole, area: number): number {
  const b = Math.sqrt(area / PI)
  const wood = woodResistivity(made) / (4 * b)
  if (made.surface !== 'wet') return wood
  const r = made.diameter / 2
  const film = wetFilm * r * Math.max(0, ln(r / b))
  return (wood * film) / (wood + film)
}

/** Ohm metre of the wood itself, as if it were even across the pole. */
export function woodResistivity(made: WoodPole): number {
  return woodPerMetre({ ...made, surface: 'dry' }) * PI * (made.diameter / 2) * (made.diameter / 2)
}

export function woodLadder(scenario: Scenario, made: WoodPole, leg: Leg): readonly Element[] {
  const ohm = woodPerMetre(made)
  const name = legName(leg)
  const heights = rungs(scenario, made)
  return [
    resistor(`${name}/${buttNode}`, rung(0, leg), leg === 1 ? buttNode : `${buttNode}-${leg}`, ohm * intoGround),
    ...heights
      .slice(1)
      .map((height, i) =>
        resistor(
          `${name}/from-${heights[i]!}-to-${height}`,
          rung(heights[i]!, leg),
          rung(height, leg),
          ohm * (height - heights[i]!),
        ),
      ),
  ]
}

/** The rung nearest to that height. */
export function rungAt(scenario: Scenario, made: WoodPole, height: number, leg: Leg): string {
  const near = rungs(scenario, made).reduce((best, it) => (Math.abs(it - height) < Math.abs(best - height) ? it : best))
  return rung(near, leg)
}

/** The ground, each whole metre, where people stand, and where metal is fixed; from the ground up. */
function rungs({ metalwork = [] }: Scenario, made: WoodPole): readonly number[] {
  const whole = Array.from({ length: Math.floor(made.height) + 1 }, (_, metre) => metre)
  const people = (['below-lv', 'above-lv'] as const).flatMap((it) => [feetAt(made, it), thighAt(made, it)])
  const fixed = [made.armHeight, made.lvHeight, ...metalwork.map((it) => it.height)]
  return [...new Set([...whole, ...people, ...fixed])].filter((it) => it <= made.height).sort((a, b) => a - b)
}

function rung(height: number, leg: Leg): string {
  return `${legName(leg)}/${height}`
}

function legName(leg: Leg): string {
  return leg === 1 ? 'wood' : `wood-${leg}`
}
