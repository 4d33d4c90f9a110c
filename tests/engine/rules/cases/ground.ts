/** Barrier, boots, rod, lead. */
import { add, after, again, all, before, by, change, drop, none, swapped, wait } from '../../../support/rules/edits'
import type { RuleCases } from '../../../support/rules/ruleCase'

const values = (it: Record<string, number | string>) => ({ values: it })
const square = (half: number, south = -half - 2.35) => [
  { x: -half, y: south },
  { x: half + 2.6, y: south },
  { x: half + 2.6, y: half },
  { x: -half, y: half },
]
const outline = (half: number) => change('gw set-barrier', { values: { outline: square(half) } })

const toRod = (name: string) => add({ who: 'gw', do: 'walk', values: { to: { x: 2.6, y: -2.35 } } }, name)

export const ground: RuleCases = {
  'barrier-first': {
    breaks: drop('gw set-barrier', 'gw take-in-barrier'),
    near: after('gw set-barrier', 'gw walk #1'),
  },
  'barrier-stays': {
    breaks: before('gw take-in-barrier', 'pic declare-safe'),
    near: after('gw take-in-barrier', 'gw pull-rod'),
  },
  'anchor-inside': {
    breaks: change('gw set-barrier', { values: { outline: square(6, -5.4) } }),
    near: change('gw set-barrier', { values: { outline: square(6, -5.6) } }),
  },
  'barrier-wide': { breaks: outline(5.9), near: outline(6) },
  'boots-inside': {
    breaks: drop('gw wear BT-43', 'gw take-off BT-43'),
    near: drop('pic wear BT-41', 'pic take-off BT-41'),
  },
  'unbooted-away': { breaks: drop('pic wear BT-41', 'pic take-off BT-41'), near: none },
  'services-located': { breaks: drop('gw locate-services'), near: before('gw locate-services', 'gw drive-rod') },
  'services-there': {
    breaks: change('gw locate-services', { values: { at: { x: 2.6, y: -3.4 } } }),
    near: change('gw locate-services', { values: { at: { x: 2.6, y: -3.3 } } }),
  },
  'rod-gloves': { breaks: drop('gw wear W-2', 'gw take-off W-2'), near: after('gw wear W-2', 'gw set-barrier') },
  'rod-deep': {
    breaks: change('gw drive-rod', values({ depth: 1.7 })),
    near: change('gw drive-rod', values({ depth: 1.9 })),
  },
  'rod-off-pole': {
    breaks: change('gw drive-rod', { values: { at: { x: 2.2, y: -2 } } }),
    near: change('gw drive-rod', { values: { at: { x: 2.4, y: -1.8 } } }),
  },
  'ground-in-order': { breaks: swapped('gw locate-services', 'gw wear BT-43'), near: drop('gw locate-services') },
  'out-until-barrier': {
    breaks: add({ who: 'gw', do: 'walk', values: { to: { x: 0, y: 2 } } }, 'gw locate-services'),
    near: again('gw locate-services'),
  },
  'lead-left': { breaks: swapped('gw walk #2', 'gw watch'), near: before('gw lay-lead', 'gw walk #2') },
  'watches-from-outside': { breaks: swapped('gw walk #2', 'gw watch'), near: before('gw watch', 'pw climb') },
  'earth-end-first': {
    breaks: all(
      after('gw lay-lead', 'pw tug conductor-a'),
      after('gw clamp-earth-end', 'pw tug conductor-a'),
      toRod('gw clamp-earth-end'),
      wait(120, 'pw haul E-07'),
    ),
    near: swapped('gw clamp-earth-end', 'gw lay-lead'),
  },
  'lead-laid': { breaks: drop('gw lay-lead'), near: swapped('gw clamp-earth-end', 'gw lay-lead') },
  'lead-clear': { breaks: change('gw lay-lead', values({ route: 'coiled' })), near: again('gw lay-lead') },
  'lead-after-earth-end': { breaks: swapped('gw clamp-earth-end', 'gw lay-lead'), near: drop('gw lay-lead') },
  'called-clear': { breaks: drop('pic call-clear #1'), near: before('pic call-clear', 'pw brush conductor-c') },
  'called-clear-off': { breaks: drop('pic call-clear #2'), near: before('pic call-clear #2', 'pw remove-cover') },
  'nobody-on-lead': {
    breaks: all(
      add({ who: 'gw', do: 'walk', values: { to: { x: 1.5, y: -1 } } }, 'pw clamp conductor-a'),
      add({ who: 'gw', do: 'hold-lead', with: 'E-07' }, 'pw tug conductor-a'),
    ),
    near: all(
      add({ who: 'gw', do: 'walk', values: { to: { x: 1.5, y: -1 } } }, 'pw brush conductor-a'),
      add({ who: 'gw', do: 'hold-lead', with: 'E-07' }, 'pw brush conductor-a'),
    ),
  },
  'clear-of-rod': {
    breaks: add({ who: 'gw', do: 'walk', values: { to: { x: -2.9, y: 0 } } }, 'pic call-clear #1'),
    near: add({ who: 'gw', do: 'walk', values: { to: { x: -3.1, y: 0 } } }, 'pic call-clear #1'),
  },
  'boots-to-the-end': {
    breaks: before('pic take-off BT-41', 'pic head-count'),
    near: after('pic take-off BT-41', 'pic return-permit'),
  },
  'barrier-to-the-end': {
    breaks: before('gw take-in-barrier', 'pic return-permit'),
    near: after('gw take-in-barrier', 'pic take-off BT-41'),
  },
  'barrier-in-with-boots': {
    breaks: swapped('gw take-in-barrier', 'gw take-off BT-43'),
    near: drop('gw take-off BT-43'),
  },
  'by-ground-worker': { breaks: by('pic', 'gw locate-services'), near: by('pw', 'gw walk clear') },
}
