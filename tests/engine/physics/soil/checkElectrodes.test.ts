// Which electrodes cannot be, each at the edge: the last that can be beside the first that cannot.

import { describe, expect, it } from 'vitest'
import { discMutual, discSelf, type Electrode } from '../../../../src/engine/physics/soil'
import { checkElectrodes } from '../../../../src/engine/physics/soil/checkElectrodes'
import { layered } from '../../../../src/engine/physics/soil/soil'
import { evenSoil, rod, twoLayers } from './rods'

const expectRefused = (why: string, ...electrodes: readonly Electrode[]): void =>
  expect(() => checkElectrodes(electrodes)).toThrow(why)
const expectTaken = (...electrodes: readonly Electrode[]): void =>
  expect(() => checkElectrodes(electrodes)).not.toThrow()

const numberless = [Number.NaN, Number.POSITIVE_INFINITY]

describe('sizes and places', () => {
  it('a length of two radii is a rod, less is not, and none without end', () => {
    expectTaken(rod('a', 0, 0.016))
    expectRefused('length', rod('a', 0, 0.0159))
    for (const length of numberless) expectRefused('length', rod('a', 0, length))
  })

  it('a place is two numbers', () => {
    for (const none of numberless) {
      expectRefused('place', rod('a', none, 2))
      expectRefused('place', rod('a', 0, 2, 0.008, 0, none))
      expectRefused('place', { id: 'd', kind: 'disc', at: { x: 0, y: none }, radius: 0.1 })
    }
  })

  it('the cage lies inside the concrete, and the concrete has a resistivity', () => {
    const butt = { ...rod('a', 0, 1.8, 0.15), kind: 'encased', coreRadius: 0.12, encasementResistivity: 200 } as const
    expectTaken(butt)
    for (const coreRadius of [0, -0.1, 0.15, 0.2]) expectRefused('core', { ...butt, coreRadius })
    for (const none of [0, -1]) expectRefused('concrete', { ...butt, encasementResistivity: none })
  })

  it('an electrode has a radius, and its top is at the surface or below', () => {
    for (const none of [0, -0.01, ...numberless]) {
      expectRefused('radius', rod('a', 0, 2, none))
      expectRefused('radius', { id: 'd', kind: 'disc', at: { x: 0, y: 0 }, radius: none })
    }
    expectTaken(rod('a', 0, 2, 0.008, 0))
    for (const none of [-0.01, ...numberless]) {
      expectRefused('top', rod('a', 0, 2, 0.008, none))
      expectRefused('top', { id: 'd', kind: 'disc', at: { x: 0, y: 0 }, radius: 0.1, depth: none })
    }
    expectTaken({ id: 'd', kind: 'disc', at: { x: 0, y: 0 }, radius: 0.1, depth: 3 })
  })

  it('a foot has a radius', () => {
    for (const none of [0, -0.08, ...numberless]) {
      expect(() => discSelf(evenSoil(100), none)).toThrow('radius')
      expect(() => discMutual(evenSoil(100), { x: 0, y: 0 }, { x: 1, y: 0 }, none)).toThrow('radius')
    }
  })
})

describe('wires', () => {
  const wire = (...points: readonly (readonly [x: number, depth: number])[]): Electrode => ({
    id: 'w',
    kind: 'wire',
    radius: 0.1,
    points: points.map(([x, depth]) => ({ x, y: 0, depth })),
  })

  it('a side of two radii is one, less is not', () => {
    expectTaken(wire([0, 1], [0.2, 1]))
    expectRefused('sides', wire([0, 1], [0.19, 1]))
  })

  it('a side that only dives is as long as it dives', () => {
    expectTaken(wire([0, 1], [0.13, 1.16]))
    expectRefused('sides', wire([0, 1], [0.11, 1.15]))
  })

  it('closed it has three corners', () => {
    const open = wire([0, 1], [2, 1]) as Extract<Electrode, { kind: 'wire' }>
    expectTaken(open)
    expectRefused('3 points', { ...open, isClosed: true })
    expectTaken({ ...open, points: [...open.points, { x: 1, y: 2, depth: 1 }], isClosed: true })
  })

  it('buried by its radius, not less, but for one end', () => {
    expectTaken(wire([0, 0.1], [3, 0.1]))
    expectTaken(wire([0, 0], [3, 0.1]))
    expectRefused('buried', wire([0, 0.09], [3, 0.09]))
  })

  it('through points that are somewhere', () => {
    for (const none of numberless) {
      expectRefused('place', wire([0, 1], [none, 1]))
      expectRefused('depth', wire([0, 1], [1, none]))
    }
    expectRefused('depth', wire([0, -0.1], [1, 1]))
    expectRefused('points', wire([0, 1]))
  })
})

describe('together', () => {
  const pad = (x: number, radius = 0.25) => ({ kind: 'disc', at: { x, y: 0 }, radius }) as const
  const upright = (x: number, radius = 0.008) => ({ kind: 'rod', at: { x, y: 0 }, top: 0, length: 2, radius }) as const
  const joined = (...parts: Extract<Electrode, { kind: 'joined' }>['parts']): Electrode => ({
    id: 'j',
    kind: 'joined',
    parts,
  })

  it('several joined are one at least', () => {
    expectRefused('a part of j', joined())
    expectTaken(joined(pad(0)))
  })

  it('two electrodes do not touch', () => {
    expectTaken(rod('a', 0, 2, 0.25), rod('b', 0.51, 2, 0.25))
    expectRefused('gap', rod('a', 0, 2, 0.25), rod('b', 0.5, 2, 0.25))
  })

  it('the nearest parts of two joined ones decide', () => {
    expectRefused('gap', joined(pad(0), pad(5)), { id: 'd', ...pad(5.1) })
    expectTaken(joined(pad(0), pad(5)), { id: 'd', ...pad(2.5) })
  })

  it('two rods or discs of one electrode are apart by the thicker one’s radius', () => {
    expectTaken(joined(pad(0), pad(0.26)))
    expectRefused('apart', joined(pad(0), pad(0.25)))
    expectRefused('apart', joined(pad(0, 0.1), pad(0.2)))
    expectRefused('apart', joined(upright(0), upright(0)))
  })

  it('a rod may stand under a disc that it is joined to, and a wire run to either', () => {
    const leads = [
      { x: 0, y: 0, depth: 0.5 },
      { x: 3, y: 0, depth: 0.5 },
    ]
    const wire = { kind: 'wire', radius: 0.005, points: leads } as const
    expectTaken(joined(pad(0), upright(0)))
    expectTaken(joined(upright(0), wire))
    expectTaken(joined(wire, pad(0)))
    expectTaken(joined(wire, { ...wire, points: [...leads].reverse() }))
  })
})

describe('soil', () => {
  it('one layer or two, the upper with a thickness', () => {
    const layer = { resistivity: 100, thickness: 1 }
    expect(() => layered({ layers: [layer, layer, { resistivity: 300 }] })).toThrow('one or two')
    for (const none of [0, -1, ...numberless]) expect(() => layered(twoLayers(100, none, 300))).toThrow('thickness')
  })
})
