/**
 * One variant of a scenario: what is wrong with which item, and when and how the visible livening strikes. Each purpose
 * draws from its own named stream, so that one more draw for the gear does not shift the event.
 */
import { stream, type Stream } from '../math/random'
import type { ItemId, Phase, Scenario, ScenarioBase } from './scenario'

type Purpose = Scenario['purpose']
type Fault = ScenarioBase['draws']['defects'][number]

export function drawScenario(base: ScenarioBase, seed: number, purpose: Purpose): Scenario {
  const { draws, ...world } = base
  const fixed = draws.fixed.find((it) => it.seed === seed && it.purpose === purpose)
  const faults = fixed
    ? fixed.defects.map((it) => draws.defects.find((each) => each.item === it.item && each.defect === it.defect) ?? it)
    : drawFaults(base, stream(seed, 'gear'))
  const choice = fixed ? fixed.visible : drawLivening(base, purpose, stream(seed, 'event'))
  return {
    ...world,
    seed,
    purpose,
    switches: world.switches.map((it) => withHungBlades(it, fixed?.hungBlades ?? [])),
    items: world.items.map((item) =>
      withFaults(
        item,
        faults.filter((it) => it.item === item.id),
      ),
    ),
    visible: choice && { ...choice, fallback: draws.fallback },
  }
}

function withHungBlades(
  device: Scenario['switches'][number],
  drawn: readonly { readonly switch: string; readonly phase: Phase }[],
): Scenario['switches'][number] {
  const hung = drawn.filter((it) => it.switch === device.id).map((it) => it.phase)
  return { ...device, hungBlades: [...new Set([...device.hungBlades, ...hung])].sort() }
}

/** None to `most`, at most one item of a type: the truck always holds a sound one to take instead. */
function drawFaults(base: ScenarioBase, from: Stream): readonly Fault[] {
  const typeOf = (id: ItemId): string | undefined => base.items.find((item) => item.id === id)?.type
  const wanted = from.below(base.draws.most + 1)
  const drawn: Fault[] = []
  let left = [...base.draws.defects]
  while (drawn.length < wanted && left.length > 0) {
    const fault = left[from.below(left.length)]!
    drawn.push(fault)
    left = left.filter((it) => typeOf(it.item) !== typeOf(fault.item))
  }
  return drawn
}

function drawLivening(base: ScenarioBase, purpose: Purpose, from: Stream): Scenario['triggers'][number] | null {
  const isQuiet = from.below(base.draws.quietOneIn) === 0
  const triggers = [...new Set(base.triggers.map((it) => it.trigger))]
  const trigger = triggers[from.below(triggers.length)]
  const choices = base.triggers.filter((it) => it.trigger === trigger)
  const choice = choices[from.below(choices.length)]
  return choice && !(isQuiet && purpose === 'assess') ? choice : null
}

function withFaults(item: Scenario['items'][number], faults: readonly Fault[]): Scenario['items'][number] {
  if (faults.length === 0) return item
  return {
    ...item,
    label: Object.assign({}, item.label, ...faults.map((it) => it.label ?? {})) as typeof item.label,
    defects: [...new Set([...item.defects, ...faults.map((it) => it.defect)])].sort(),
  }
}
