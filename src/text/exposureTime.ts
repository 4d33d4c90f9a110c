/** How long an exposure lasted, as a phrase: the longest of its shots, or that nothing cleared it. */
import type { Exposure } from '../engine'
import { english } from './en'
import { makeSay } from './makeSay'
import { seconds } from './quantities'

const say = makeSay(english)

export function exposureTime({ cleared, duration, shots }: Pick<Exposure, 'cleared' | 'duration' | 'shots'>): string {
  if (!cleared) return say('exposure.uncleared')
  if (shots.count < 2) return seconds(duration)
  return say('exposure.shots', { time: seconds(duration), count: shots.count, total: seconds(shots.total) })
}
