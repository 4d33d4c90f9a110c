/** `insulation`: proof, use and retest of a class; `retestMonths` is absent for what is tested on doubt. */
import { insulatingItems, insulationClasses, insulationRating } from '../../../engine'
import { model } from '../model'

export const insulationModel = model(
  'insulation',
  (inputs) => ({
    item: inputs.oneOf('item', insulatingItems),
    cls: inputs.oneOf('class', insulationClasses),
  }),
  ({ item, cls }) => {
    const { proofTest, maxUse, retestMonths } = insulationRating(item, cls)
    const voltages = { proofTestV: proofTest, maxUseV: maxUse }
    return retestMonths === undefined ? voltages : { ...voltages, retestMonths }
  },
)
