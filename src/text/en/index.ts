/** English, gathered from its areas. */
import { app } from './app'

export const english = { ...app } as const
