/** English, gathered from its areas. */
import { app } from './app'
import { gear } from './gear'
import { label } from './label'

export const english = { ...app, ...gear, ...label } as const
