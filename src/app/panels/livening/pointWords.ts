/** A point of the circuit in a line worker's words, from how hazard/circuit names it; what has no words stays as it is. */
import { type Speaker, say } from '../../../text'
import { handholdWords } from './FeelersBox'

const ofSource = ['emf', 'bus', 'end', 'star', 'station'] as const

export function pointWords(node: string, speaker: Speaker): string {
  if (node === '0') return say('circuit.earth')
  const [on, place] = node.split('@')
  if (place !== undefined)
    return say('point.at', { thing: thingWords(on!, speaker), place: placeWords(place, speaker) })
  const [first = '', second = '', third] = node.split('/')
  if (first === 'lead' && third !== undefined) return handholdWords(`${second}/${third}`, speaker)
  if (first === 'wood') return say('point.height', { height: second })
  if (first === 'cage' || first === 'steel') return say('point.cage')
  if (first === 'butt') return say('point.butt')
  const [what = '', phase = ''] = second.split('-')
  const known = ofSource.find((it) => it === what)
  return known
    ? say('point.of', { thing: thingWords(first, speaker), what: say(`point.${known}`), phase }).trim()
    : handholdWords(node, speaker)
}

const thingWords = (id: string, speaker: Speaker): string =>
  speaker.has(`thing.${id}`) ? speaker.say(`thing.${id}`) : id

/** Where along the section. */
function placeWords(place: string, speaker: Speaker): string {
  if (place === 'pole' || place === 'crossing') return say(`point.${place}`)
  const [, beside, end] = /^(.+)-(from|to)$/.exec(place) ?? []
  if (beside !== undefined)
    return say(end === 'from' ? 'point.begins' : 'point.ends', { thing: thingWords(beside, speaker) })
  return say('point.beside', { thing: thingWords(place, speaker) })
}
