/** The one table of keys. Letters act only outside of fields where something is written. */
export type Intent =
  | 'choosePerson'
  | 'markPerson'
  | 'everyone'
  | 'move'
  | 'act'
  | 'sheet'
  | 'fold'
  | 'again'
  | 'look'
  | 'label'
  | 'test'
  | 'pass'
  | 'quarantine'
  | 'bookOut'
  | 'take'
  | 'drawing'
  | 'eyes'
  | 'overhead'
  | 'closer'
  | 'tape'
  | 'tapeAway'
  | 'hint'
  | 'goOn'
  | 'nextCard'
  | 'withdraw'
  | 'undo'
  | 'play'
  | 'place'

export interface KeyEntry {
  readonly intent: Intent
  readonly keys: readonly string[]
  readonly shown: string
}

export const keyTable: readonly KeyEntry[] = [
  { intent: 'choosePerson', keys: ['1', '2', '3', '4'], shown: '1 2 3 4' },
  { intent: 'markPerson', keys: ['!', '@', '#', '$'], shown: 'Shift 1 2 3 4' },
  { intent: 'everyone', keys: ['e'], shown: 'E' },
  { intent: 'move', keys: ['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight', 'Home', 'End'], shown: '↑ ↓ ← →' },
  { intent: 'act', keys: ['Enter'], shown: 'Enter' },
  { intent: 'sheet', keys: ['s'], shown: 'S' },
  { intent: 'fold', keys: ['Escape'], shown: 'Esc' },
  { intent: 'again', keys: ['a'], shown: 'A' },
  { intent: 'look', keys: ['l'], shown: 'L' },
  { intent: 'label', keys: ['r'], shown: 'R' },
  { intent: 'test', keys: ['t'], shown: 'T' },
  { intent: 'pass', keys: ['p'], shown: 'P' },
  { intent: 'quarantine', keys: ['q'], shown: 'Q' },
  { intent: 'bookOut', keys: ['b'], shown: 'B' },
  { intent: 'take', keys: ['k'], shown: 'K' },
  { intent: 'drawing', keys: ['d'], shown: 'D' },
  { intent: 'eyes', keys: ['v'], shown: 'V' },
  { intent: 'overhead', keys: ['o'], shown: 'O' },
  { intent: 'closer', keys: ['z'], shown: 'Z' },
  { intent: 'tape', keys: ['m'], shown: 'M' },
  { intent: 'tapeAway', keys: ['x'], shown: 'X' },
  { intent: 'hint', keys: ['h'], shown: 'H' },
  { intent: 'goOn', keys: ['g'], shown: 'G' },
  { intent: 'nextCard', keys: ['n'], shown: 'N' },
  { intent: 'withdraw', keys: ['w'], shown: 'W' },
  { intent: 'undo', keys: ['u'], shown: 'U' },
  { intent: 'play', keys: ['c'], shown: 'C' },
  { intent: 'place', keys: [], shown: 'Alt 1 to 5' },
]

export function findIntent(key: string): Intent | undefined {
  return keyTable.find((entry) => entry.keys.includes(key.length === 1 ? key.toLowerCase() : key))?.intent
}
