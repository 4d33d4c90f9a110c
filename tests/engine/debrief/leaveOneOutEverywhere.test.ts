/**
 * Every clean run of every scenario with one act left out, swapped, repeated or done by somebody else, as
 * leaveOneOut.test.ts does it whole for the first one. Here a share, evenly over the run, shifted by the run's name so
 * that the runs do not all try the same place: a new scenario costs seconds. Under the pack that asks for everything
 * each change must be refused, found or felt, or stand in a list with its reason. Under a pack that asks for less, and where the line came alive and the
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

/** LEAVE_OUT=whole tries every change of every run: minutes a run. */
const isThorough = process.env['LEAVE_OUT'] === 'whole'

/** So many changes of each run, of so many of those that no rule finds the exposures are worked out again. */
const tried = 120
const swept = isThorough ? Infinity : 10
const asksForEverything = 'concrete-rod'

/**
 * What may be done otherwise without a word, by what was done in words ("edit who verb thing …"), with the reason that a
 * line worker would give. Nothing else passes.
 */
const harmless: readonly { readonly isMeant: (change: string) => boolean; readonly reason: string }[] = [
  { isMeant: (it) => / mark-hazard /.test(it), reason: 'Hazards have no order among themselves.' },
  {
    isMeant: (it) => /\b(take|put-down|give) /.test(it),
    reason: 'What lies at hand is taken along or put back when it suits; whoever lacks it is refused.',
  },
  {
    isMeant: (it) => / walk truck\b/.test(it),
    reason: 'Whoever stands at the truck need not walk there; what is said by radio may be said on the way.',
  },
  {
    isMeant: (it) => / (report|hear)-step /.test(it),
    reason:
      'The word that counts is the one said back, the report the one of the whole isolation: the packs ask for those.',
  },
  {
    isMeant: (it) => /^(by-other|swap) .*\b(ask-owner|search-premises|look)\b/.test(it),
    reason: 'Asking and looking are as good the other way round, and by whoever stands there.',
  },
  {
    isMeant: (it) => / (look|read-label|test-item|judge) (CI|CK|CB|MP|F)-/.test(it),
    reason: 'The packs name the gear that has to be passed: irons, keys, bags and papers are not among it.',
  },
  {
    isMeant: (it) => / (put-carriers-in|unbag-carriers|write-tag|motor-supply-on|close-main) /.test(it),
    reason: 'No pack asks how a supply is given back, nor that a tag is written; only that it waits for the permit.',
  },
  {
    isMeant: (it) => /^swap .*\b(bag-carriers|tag|unbond-lv|lower)\b/.test(it),
    reason: 'Neighbouring acts at one place, of which neither relies on the other.',
  },
  {
    isMeant: (it) => /^swap .* (stop-job|walk clear|read-weather|start-again)\b/.test(it),
    reason:
      'When thunder is heard all stop and all go; who speaks first is no rule, and the sky is read on the way too.',
  },
  {
    isMeant: (it) => /^swap .* walk (\{|lv-)/.test(it),
    reason: 'Whoever stands where the act can be done, or watches from, may walk on before or after it.',
  },
  {
    isMeant: (it) => /^swap .* match-pole pole <> .* inspect-pole pole/.test(it),
    reason: 'Both are looks at the same pole from its foot, before anybody climbs.',
  },
  {
    isMeant: (it) => / sign-on$/.test(it),
    reason: 'Who has signed on and stays signs once more after a change of charge; the packs ask for the first only.',
  },
]

const exposuresOf = (result: Result): string =>
  JSON.stringify(result.sweep.map(({ person, path, exposure, ratios }) => ({ person, path, exposure, ratios })))

describe.each(cleanRuns().map(({ slug, name }) => [`${slug}/${name}`, slug, name] as const))('%s', (id, slug, name) => {
  const { scenario, orders, pack: packId } = recorded(name, slug)
  const pack = shippedPack(packId)

  it('is clean, and no change of it goes unanswered', { timeout: isThorough ? 3_600_000 : 300_000 }, () => {
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
    const open = silent.filter((variant) => !harmless.some(({ isMeant }) => isMeant(changeOf(variant))))
    expect(timeline.end.paper.closed).toBe(true)
    const clean = exposuresOf(judgeRun(timeline, pack, { sweep: true, cache }))
    const unanswered = open.slice(0, swept).filter((variant) => {
      return exposuresOf(judgeRun(again.run(variant.orders), pack, { sweep: true, cache })) === clean
    })
    expect(unanswered.map(changeOf)).toEqual([])
    expect(open.slice(swept).map(changeOf), 'more than can be worked out').toEqual([])
  })
})

/** Evenly spread, beginning where the name says. */
function share<T>(all: readonly T[], name: string): readonly T[] {
  if (isThorough) return all
  const step = Math.max(1, Math.floor(all.length / tried))
  const from = [...name].reduce((sum, letter) => sum + letter.charCodeAt(0), 0) % step
  return all.filter((_, i) => i % step === from)
}

const changeOf = (variant: Omission): string => `${'edit' in variant ? String(variant.edit) : 'drop'} ${variant.name}`

interface Omission {
  readonly name: string
  readonly orders: readonly Order[]
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
