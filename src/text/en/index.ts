/** English, gathered from its areas. */
import { actions } from './actions'
import { app } from './app'
import { figures } from './figures'
import { front } from './front'
import { gear } from './gear'
import { judging } from './judging'
import { label } from './label'
import { livening } from './livening'
import { mattered } from './mattered'
import { netlist } from './netlist'
import { refusals } from './refusals'
import { scene } from './scene'

export const english = {
  ...actions,
  ...app,
  ...figures,
  ...front,
  ...gear,
  ...judging,
  ...label,
  ...livening,
  ...mattered,
  ...netlist,
  ...refusals,
  ...scene,
} as const
