/** Hangs the caution tag on the handle of a switch, on a main switch on low voltage, on the cut-outs of a transformer. */
import { requireSwitch } from '../../site/questions'
import type { Action } from '../action'
import { changeSwitch, finishStep, moveItem, putInHands, tell } from '../changes'
import { atHand, handsFree } from '../conditions'
import { changeMain, isMain, mains, requireMain } from '../mains'
import { itemIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import type { ItemId, ThingId } from '../../site/scenario'
import type { Site } from '../../site/site'
import { switches } from '../things'
import { atHandle } from './lockSwitch'

const tagOn = (site: Site, thing: ThingId): ItemId | null =>
  isMain(site, thing) ? (requireMain(site, thing).tag ?? null) : requireSwitch(site, thing).tag

const withTag = (site: Site, thing: ThingId, tag: ItemId | null): Site =>
  isMain(site, thing) ? changeMain(site, thing, { tag }) : changeSwitch(site, thing, { tag })

const things = (site: Site): readonly ThingId[] => [...switches(site), ...mains(site)]

export const tagSwitch: Action = {
  id: 'tag',
  covers: ['A29', 'A30'],
  withTypes: ['tag'],
  things,
  byHand: true,
  check: all(atHandle, atHand, handsFree(1, 'item'), (site, order) =>
    tagOn(site, thingIn(order)) === null ? undefined : refuse(order, 'already-so'),
  ),
  takes: () => 15,
  apply: (site, order) => {
    const [tag, device] = [itemIn(order), thingIn(order)]
    const tagged = withTag(moveItem(site, tag, { kind: 'fitted' }), device, tag)
    const isSecured = !isMain(site, device) && requireSwitch(site, device).lock !== null
    return tell(isSecured ? finishStep(tagged, device) : tagged, order, device, { tag })
  },
}

export const untag: Action = {
  id: 'untag',
  covers: ['A89'],
  things,
  check: all(atHandle, handsFree(1), (site, order) =>
    tagOn(site, thingIn(order)) === null ? refuse(order, 'already-so') : undefined,
  ),
  takes: () => 10,
  apply: (site, order) => {
    const device = thingIn(order)
    const tag = tagOn(site, device)
    const off = tag === null ? site : putInHands(site, tag, order.who)
    return tell(withTag(off, device, null), order, device)
  },
}
