/** What a card of the plan can be made of: every act of hands, with whatever it can take and go on. */
import { actions } from '../../engine'
import { actsOfGroup, groupOf } from './groups'
import { requireHeld, siteNow } from './held'

export interface PlanChoices {
  readonly acts: readonly string[]
  readonly items: readonly string[]
  readonly things: readonly string[]
}

/** Where an act may be meant that names no thing of its own. */
const places = ['ground', 'pole']

const headingsFor = (act: string): readonly string[] =>
  ['conductors', 'lv'].map(groupOf).filter((group) => actsOfGroup(group).includes(act))

export function planChoices(act: string): PlanChoices {
  const site = siteNow(requireHeld())
  const action = actions.get(act)
  return {
    acts: [...actions.values()].filter((it) => !it.speech && (it.withTypes || it.things)).map((it) => it.id),
    items: Object.values(site.items)
      .filter((item) => action?.withTypes?.includes(item.type))
      .map((item) => item.id),
    things: action ? [...headingsFor(act), ...(action.things?.(site) ?? []), ...places] : [],
  }
}
