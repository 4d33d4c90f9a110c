/** A rule of a pack by its id. */
import type { PackRule } from '../../engine'
import { packText, requirePack } from './library'

/** By the text of the pack: two editions may have one id. */
const byPack = new Map<string, ReadonlyMap<string, PackRule>>()

export function findRule(pack: string, id: string): PackRule | undefined {
  const text = packText(pack)
  let rules = byPack.get(text)
  if (!rules) {
    rules = new Map(requirePack(pack).rules.map((rule) => [rule.id, rule]))
    byPack.set(text, rules)
  }
  return rules.get(id)
}

/** Rules that speak of an act, in the order of the pack. */
export const rulesOfAct = (pack: string, act: string): readonly PackRule[] =>
  requirePack(pack).rules.filter((rule) => JSON.stringify(rule.parameters).includes(`"${act}"`))
