export { describePart } from './describePart'
export { instantNetlist } from './instantNetlist'
export { netlist, type Netlist } from './netlist'
