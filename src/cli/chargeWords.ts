/** Of a capacitor bank: what is on it at most, and one and five minutes after it was switched off. */
import { chargeLeft, type Scenario } from '../engine'
import { seconds, volts } from '../text'

export function chargeLines({ livenings }: Scenario, id: string): readonly string[] {
  const bank = livenings.find((it) => it.id === id)
  if (bank?.kind !== 'stored-charge') return []
  return [0, 60, 300].map((after) => {
    const { voltage, energy } = chargeLeft(bank, after)
    return `  ${seconds(after)} after it was switched off: ${volts(voltage)}, ${Math.round(energy)} J`
  })
}
