/**
 * The live low-voltage wires under the line: fed from a transformer outside the section, whose star point is earthed
 * far away (circuit/electrodes.ts). Its high-voltage side belongs to another circuit and is left out: the star holds its
 * neutral whatever happens here. Each wire leaks over its insulator into the pole.
 */
import type { Element } from '../../physics/network'
import type { LowVoltage } from '../../site/scenario'
import { polar } from '../../math/complex'
import { PI } from '../../math/portable'
import { cageNode, lowVoltageStarNode } from './nodes'
import { resistor } from './parts'

const angleOf = { A: 0, B: (-2 * PI) / 3, C: (2 * PI) / 3 } as const

export function lowVoltage(lv: LowVoltage): readonly Element[] {
  return lv.wires.flatMap((wire): Element[] => {
    const leak = resistor(`${wire.id}/insulator`, wire.id, cageNode, lv.insulatorLeakage)
    const impedance = lv.sourceImpedance
    if (wire.phase === 'N') {
      return [{ id: `${wire.id}/wire`, kind: 'impedance', from: lowVoltageStarNode, to: wire.id, impedance }, leak]
    }
    const behind = `lv/emf-${wire.phase}`
    return [
      {
        id: behind,
        kind: 'voltage',
        from: behind,
        to: lowVoltageStarNode,
        voltage: polar(lv.voltage, angleOf[wire.phase]),
      },
      { id: `${wire.id}/wire`, kind: 'impedance', from: behind, to: wire.id, impedance },
      leak,
    ]
  })
}
