/** English, gathered from its areas. */
import { actions } from './actions'
import { app } from './app'
import { figures } from './figures'
import { front } from './front'
import { gear } from './gear'
import { isolation } from './isolation'
import { judging } from './judging'
import { label } from './label'
import { leads } from './leads'
import { livening } from './livening'
import { mattered } from './mattered'
import { netlist } from './netlist'
import { passes } from './passes'
import { refusals } from './refusals'
import { scene } from './scene'
import { shown } from './shown'
import { worn } from './worn'
import { tools } from './tools'

export const english = {
  ...actions,
  ...app,
  ...figures,
  ...front,
  ...gear,
  ...isolation,
  ...judging,
  ...label,
  ...leads,
  ...livening,
  ...mattered,
  ...netlist,
  ...passes,
  ...refusals,
  ...scene,
  ...shown,
  ...tools,
  ...worn,
} as const
