/**
 * Every clean run of every scenario with one act left out, swapped, repeated or done by somebody else, as
 * leaveOneOut.test.ts does it whole for the first one. Here a share, evenly over the run, shifted by the run's name so
 * that the runs do not all try the same place: a new scenario costs seconds. Under the pack that asks for everything
 * each change must be refused, found or felt. Under a pack that asks for less, and where the line came alive and the
 * plan changed, whatever a critical rule needs may not be left out.
 */
import { describe, expect, it } from 'vitest'
import { createSweepCache, judgeRun, type Order, type Pack, type Result } from '../../../src/engine'
import { findFindings } from '../../../src/engine/rules/findFindings'
import { bindEach, namedSets } from '../../../src/engine/rules/language/each'
import { isLinked } from '../../../src/engine/rules/language/link'
import { allDone, allMatching } from '../../../src/engine/rules/language/pattern'
import { readLinks, readPatterns } from '../../../src/engine/rules/language/read'
import { isBefore, viewRun } from '../../../src/engine/rules/language/runView'
import { cleanRuns, recorded, shippedPack } from '../../support/rules/recorded'
import { replayer } from '../../support/rules/replay'
import { listVariants } from '../../support/rules/variants'

/** So many changes of each run, of so many of those that no rule finds the exposures are worked out again. */
const tried = 120
const swept = 10
const asksForEverything = 'concrete-rod'

const inspecting = ['read-label', 'look', 'test-item', 'judge']

/** What may be done otherwise without a word, with the reason that a line worker would give. */
const harmless: readonly { readonly isMeant: (name: string) => boolean; readonly reason: string }[] = [
  { isMeant: (name) => /mark-hazard/.test(name), reason: 'Hazards have no order among themselves.' },
  {
    isMeant: (name) => /\b(take|put-down) /.test(name),
    reason: 'What lies at hand is taken along or put back when it suits; whoever lacks it is refused.',
  },
  { isMeant: (name) => /walk truck/.test(name), reason: 'Whoever stands at the truck need not walk there.' },
]

const exposuresOf = (result: Result): string =>
  JSON.stringify(result.sweep.map(({ person, path, exposure, ratios }) => ({ person, path, exposure, ratios })))

describe.each(cleanRuns().map(({ slug, name }) => [`${slug}/${name}`, slug, name] as const))('%s', (id, slug, name) => {
  const { scenario, orders, pack: packId } = recorded(name, slug)
  const pack = shippedPack(packId)

  it('is clean, and no change of it goes unanswered', { timeout: 300_000 }, () => {
    const again = replayer(scenario, orders)
    const cache = createSweepCache()
    const timeline = again.run(orders)
    expect(findFindings(timeline, pack).map(({ rule, at }) => `${rule} ${at}`)).toEqual([])
    const crew = scenario.crew.filter(({ arrivesAt }) => arrivesAt === undefined).map((it) => it.id)
    const isWhole = packId === asksForEverything && timeline.struck === null
    const variants = share(isWhole ? listVariants(orders, crew) : neededOf(timeline, pack), id)
    expect(variants.length).toBeGreaterThan(isWhole ? 100 : 5)
    const silent = variants.filter((variant) => {
      const edited = again.runUnrefused(variant.orders)
      return edited !== undefined && findFindings(edited, pack).length === 0
    })
    const isSpoken = spokenBy(pack, new Map(scenario.items.map((it) => [it.id, it.type])))
    const open = silent.filter(({ name: change }) => {
      return isSpoken(change) && !harmless.some(({ isMeant }) => isMeant(change))
    })
    expect(timeline.end.paper.closed).toBe(true)
    const clean = exposuresOf(judgeRun(timeline, pack, { sweep: true, cache }))
    const unanswered = open.slice(0, swept).filter((variant) => {
      return exposuresOf(judgeRun(again.run(variant.orders), pack, { sweep: true, cache })) === clean
    })
    expect(unanswered.map((it) => `${'edit' in it ? String(it.edit) : 'drop'} ${it.name}`)).toEqual([])
    expect(open.length).toBeLessThanOrEqual(swept)
  })
})

/** Evenly spread, beginning where the name says. */
function share<T>(all: readonly T[], name: string): readonly T[] {
  const step = Math.max(1, Math.floor(all.length / tried))
  const from = [...name].reduce((sum, letter) => sum + letter.charCodeAt(0), 0) % step
  return all.filter((_, i) => i % step === from)
}

interface Omission {
  readonly name: string
  readonly orders: readonly Order[]
}

/** Some rule of the pack is about every act and every type of gear of the change, beyond who does it. */
function spokenBy(pack: Pack, types: ReadonlyMap<string, string>): (name: string) => boolean {
  const spoken = JSON.stringify(pack.rules.filter(({ kind }) => kind !== 'by-whom' && kind !== 'repeat'))
  const judged = JSON.stringify(pack.rules.filter(({ kind }) => kind === 'judgement'))
  return (name) =>
    name.split(' <> ').every((act) => {
      const [, verb = '', ...about] = act.split(' ')
      const gear = about.flatMap((it) => types.get(it) ?? [])
      const asked = inspecting.includes(verb) ? judged : spoken
      return spoken.includes(`"${verb}"`) && gear.every((it) => asked.includes(`"${it}"`))
    })
}

/** Each act that alone meets what a critical rule needs before another act, left out. */
function neededOf(timeline: Parameters<typeof viewRun>[0], pack: Pack): readonly Omission[] {
  const view = viewRun(timeline, pack)
  const rules = pack.rules.filter(({ severity, kind }) => severity === 'critical' && kind === 'done-before')
  const needed = rules.flatMap(({ parameters }) => {
    const members = namedSets.get(String(parameters['forEach']))?.members(timeline.scenario) ?? ['']
    return members.flatMap((member) => {
      const bound = bindEach(parameters, member)
      const meets = allDone(view, readPatterns(bound, 'need'))
      return allMatching(view, readPatterns(bound, 'before')).flatMap((act) => {
        const before = meets.filter((it) => isBefore(it, act) && isLinked(view, readLinks(bound, 'link'), it, act))
        return before.length === 1 ? before : []
      })
    })
  })
  return [...new Set(needed)].map((entry) => ({
    name: `${entry.order.who} ${entry.order.do} ${entry.order.on ?? ''}`.trim(),
    orders: timeline.entries.filter((it) => it !== entry).map(({ order }) => order),
  }))
}
