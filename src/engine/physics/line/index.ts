export { capacitanceMatrix } from './capacitanceMatrix'
export { kronReduce } from './kronReduce'
export type { LineConductor } from './seriesImpedance'
export { seriesImpedance } from './seriesImpedance'
