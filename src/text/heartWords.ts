/** The chance of fibrillation as a sentence; where both ends of its range read the same, the one figure is all of it. */
import { english } from './en'
import { makeSay } from './makeSay'
import { percent } from './quantities'

const say = makeSay(english)

export function heartWords(chance: { readonly likely: number; readonly low: number; readonly high: number }): string {
  const [likely, low, high] = [percent(chance.likely), percent(chance.low), percent(chance.high)]
  return low === high ? say('chance.heartOne', { likely }) : say('chance.heart', { likely, low, high })
}
