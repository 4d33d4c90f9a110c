/** Where a point of the ground lies, in metres from the pole and points of the compass. */
import { english } from './en'
import { makeSay } from './makeSay'
import { plain } from './quantities'

const say = makeSay(english)

export const spotWords = ({ x, y }: { readonly x: number; readonly y: number }): string =>
  say('aim.at', {
    east: plain(Math.abs(x), 2),
    side: say(x < 0 ? 'where.west' : 'where.east'),
    north: plain(Math.abs(y), 2),
    end: say(y < 0 ? 'where.south' : 'where.north'),
  })
