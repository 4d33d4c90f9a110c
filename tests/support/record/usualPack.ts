/** Whose rules a scenario is meant for: those of its clean run. */
import { runsOf } from './runs'

export function usualPack(slug: string): string {
  return runsOf[slug]?.find(({ name }) => name === 'clean')?.pack ?? 'concrete-rod'
}
