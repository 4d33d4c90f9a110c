/** English, gathered from its areas. */
import { actions } from './actions'
import { app } from './app'
import { gear } from './gear'
import { label } from './label'
import { refusals } from './refusals'
import { scene } from './scene'

export const english = { ...actions, ...app, ...gear, ...label, ...refusals, ...scene } as const
