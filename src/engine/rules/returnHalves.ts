/** Acts that undo another: the half of a pair that is forgotten when the work itself is done. */
const undoes: Readonly<Record<string, string>> = {
  'book-in': 'book-out',
  'clear-isolation-earth': 'earth-isolation-point',
  'close-switch': 'open-switch',
  lower: 'haul',
  'pull-rod': 'drive-rod',
  'put-down': 'take',
  'ask-reclose-on': 'ask-reclose-block',
  'remove-cover': 'fit-cover',
  'remove-guard': 'fit-guard',
  retie: 'untie',
  'return-permit': 'take-permit',
  'set-remote': 'set-local',
  'step-off-mat': 'step-on-mat',
  'take-in-barrier': 'set-barrier',
  'take-off': 'wear',
  'unbond-line': 'bond-line',
  'unbond-metal': 'bond-metal',
  'stow-bucket': 'enter-bucket',
  'take-up-platform': 'lay-platform',
  'unbag-carriers': 'bag-carriers',
  'unbond-lv': 'bond-lv',
  'unbond-truck': 'bond-truck',
  'unbridge-gap': 'bridge-gap',
  unclamp: 'clamp',
  'unclamp-by-hand': 'clamp-by-hand',
  'unclamp-earth-end': 'clamp-earth-end',
  unlock: 'lock',
  unstrap: 'strap-on',
  untag: 'tag',
}

/** By the act that undoes, the act that it undoes. */
export const firstHalves: ReadonlyMap<string, string> = new Map(Object.entries(undoes))

/** What the questions about the site say where something was left as it should not be left. */
export const undoneWhys: ReadonlySet<string> = new Set([
  'still-out',
  'left-up',
  'left-local',
  'not-as-found',
  'permit-held',
  'untied',
])

/** The act that makes a state, by what the questions about the site say where the state is missing. */
export const madeBy: ReadonlyMap<string, string> = new Map([
  ['no-barrier', 'set-barrier'],
  ['no-boots', 'wear'],
  ['no-cover', 'fit-cover'],
  ['no-isolation-earth', 'earth-isolation-point'],
  ['no-lock', 'lock'],
  ['no-tag', 'tag'],
  ['not-bonded', 'bond-metal'],
  ['not-brushed', 'brush'],
  ['not-earthed', 'clamp'],
  ['not-guarded', 'fit-guard'],
  ['not-strapped', 'strap-on'],
])
