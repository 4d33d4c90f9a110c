/** What the control room says and what of it comes over the line: a number that is garbled, once. */
import type { Misheard, Scenario } from './scenario'
import type { Site } from './site'

/** The garble that still stands for this number; none once it has been cleared up. */
export function findMisheard(site: Site, message: string): Misheard | undefined {
  if (site.marks[clearedUp(message)] !== undefined) return undefined
  return site.scenario.control.misheard?.find((it) => it.message === message)
}

/** The mark that says that it has been. */
export const clearedUp = (message: string): string => `misheard:${message}`

/** The number as it is heard now. */
export const heardAs = (site: Site, message: string): string => findMisheard(site, message)?.saidAs ?? message

/** Words of a message, each as it is heard now. */
export const heardWords = (site: Site, message: string): string =>
  message
    .split(' ')
    .map((word) => `${word.startsWith('#') ? '#' : ''}${heardAs(site, word.replace(/^#/, ''))}`)
    .join(' ')

/** What was read back is what control said, or what it lets pass. */
export function isTakenAsRight(site: Site, said: string, readBack: string): boolean {
  if (readBack === said) return true
  const garbled = said.split(' ').flatMap((word) => findMisheard(site, word.replace(/^#/, '')) ?? [])
  return readBack === heardWords(site, said) && garbled.every((it) => it.corrects === false)
}

/**
 * What a permit is for: `#` and its number where it has one, the pole, the points of isolation in order of label, `@` and
 * the second after midnight at which it ends.
 */
export function permitLimits({ pole, switches, control: { permit } }: Scenario): string {
  const labels = switches.map((it) => it.label).sort()
  return [
    ...(permit ? [`#${permit.number}`] : []),
    pole.number,
    ...labels,
    ...(permit ? [`@${permit.until}`] : []),
  ].join(' ')
}

/** With its last two places changed over; undefined where that is the same. */
export function findTurned(number: string): string | undefined {
  const turned = `${number.slice(0, -2)}${number.slice(-1)}${number.slice(-2, -1)}`
  return turned === number ? undefined : turned
}
