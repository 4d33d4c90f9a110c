/** Lays an insulating platform where one stands, and takes it up again; whoever stands still there stands on it. */
import { standingPoint } from '../../site/bodies'
import { distance } from '../../site/place'
import type { ItemId } from '../../site/scenario'
import type { LaidPlatform, Site } from '../../site/site'
import type { Action } from '../action'
import { moveItem, putInHands, tell } from '../changes'
import { atHand, handsFree, onSite, thingAtHand } from '../conditions'
import { secondsToFetch } from '../fetching'
import { itemIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { itemTypes } from '../things'

/** Metres within which it can be grasped (common practice, no source). */
const armsLength = 1.5

export const layPlatform: Action = {
  id: 'lay-platform',
  covers: ['A38', 'A44'],
  withTypes: ['insulating-platform'],
  byHand: true,
  check: all(onSite, atHand, handsFree(2, 'item')),
  takes: (site, order) => 20 + secondsToFetch(site, order.who, itemIn(order)),
  apply: (site, order) => {
    const item = itemIn(order)
    const { x, y } = standingPoint(site, order.who)
    const platforms = [...laid(site), { item, at: { x, y } }]
    return tell({ ...moveItem(site, item, { kind: 'fitted' }), platforms }, order, item)
  },
}

export const takeUpPlatform: Action = {
  id: 'take-up-platform',
  covers: ['A38', 'A85'],
  things: itemTypes((type) => type === 'insulating-platform'),
  check: all(onSite, handsFree(2), (site, order) => {
    const platform = findLaid(site, thingIn(order))
    if (!platform) return thingAtHand(site, order) ?? refuse(order, 'already-so')
    const isNear = distance(platform.at, standingPoint(site, order.who)) <= armsLength
    return isNear ? undefined : refuse(order, 'out-of-reach')
  }),
  takes: () => 15,
  apply: (site, order) => {
    const item = thingIn(order)
    const platforms = laid(site).filter((it) => it.item !== item)
    return tell({ ...putInHands(site, item, order.who), platforms }, order, item)
  },
}

const laid = ({ platforms = [] }: Site): readonly LaidPlatform[] => platforms

const findLaid = (site: Site, item: ItemId): LaidPlatform | undefined => laid(site).find((it) => it.item === item)
