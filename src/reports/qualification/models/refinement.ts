/**
 * `refinement`: one electrode's resistance as it is cut into ever more pieces, each time twice as many. `order` is log2 of
 * how much smaller the last change is than the one before: 1 when each halving halves what is still wrong. `limitOhm` is
 * where the last three would end if that went on (Aitken); `changeShare` the last change in the last resistance.
 */
import { solveElectrodes } from '../../../engine'
import { model } from '../model'
import { readElectrode, readSoil } from './electrodeSystem'

const times = 3

export const refinementModel = model(
  'refinement',
  (inputs) => {
    const pieces = inputs.whole('pieces', { atLeast: 1 })
    return { soil: readSoil(inputs), electrode: readElectrode(inputs.object('electrode')).electrode, pieces }
  },
  ({ soil, electrode, pieces }) => {
    const resistances = Array.from({ length: times }, (_, i) => {
      return solveElectrodes(soil, [electrode], pieces * 2 ** i).resistance[0]![0]!
    })
    const [coarse, middle, fine] = resistances as [number, number, number]
    const [before, last] = [coarse - middle, middle - fine]
    return {
      resistanceOhm: resistances,
      order: Math.log2(before / last),
      limitOhm: fine - (last * last) / (before - last),
      changeShare: last / fine,
    }
  },
)
