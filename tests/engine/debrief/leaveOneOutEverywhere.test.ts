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
const harmless: readonly {
  readonly isMeant: (change: string) => boolean
  /** In these places alone, where the others have no such occasion. */
  readonly at?: readonly string[]
  readonly reason: string
}[] = [
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
    isMeant: (it) => / (put-carriers-in|unbag-carriers|write-tag|motor-supply-on) /.test(it),
    reason: 'No pack asks how a supply is given back, nor that a tag is written; only that it waits for the permit.',
  },
  {
    isMeant: (it) => /^drop so close-main pump-house$/.test(it),
    at: ['bellweather-farm'],
    reason: 'No pack asks that the crew gives an owner his supply back.',
  },
  {
    isMeant: (it) => /^swap .*\b(bag-carriers|tag|unbond-lv|lower)\b/.test(it),
    reason: 'Neighbouring acts at one place, of which neither relies on the other.',
  },
  {
    isMeant: (it) =>
      /^(swap|drop|by-other) .*(stop-job|walk clear|read-weather|start-again|watch|climb \{"to":"below-lv"\})/.test(it),
    at: ['gannetry-spit'],
    reason:
      'When thunder is heard all stop and all go; no pack asks who speaks first, or for a word beyond the look at the sky.',
  },
  {
    isMeant: (it) => / walk (\{|lv-)/.test(it),
    at: ['gannetry-spit', 'larkmoss-close'],
    reason: 'Whoever stands where the act can be done, or watches from, may walk there before, after or not at all.',
  },
  {
    isMeant: (it) => / (match|inspect)-pole pole\b/.test(it),
    at: ['gannetry-spit'],
    reason: 'Looked at before the first climb; once more after thunder is more than any pack asks.',
  },
  {
    isMeant: (it) => /^drop pic match-pole pole$/.test(it),
    at: ['ironstone-park'],
    reason: 'The next pole was assessed by its number already.',
  },
  {
    isMeant: (it) => /^drop so (search-premises|look) (dairy-set|pump-house|hall-roof)$/.test(it),
    at: ['bellweather-farm', 'saltbridge-road'],
    reason: 'The packs ask for the owner and the lock; the search is how one knows whom to ask.',
  },
  {
    isMeant: (it) => /^swap .* (wear|take-off) (G|CI|Y|BT|W)-\d+( <> |$)/.test(it),
    at: ['bellweather-farm', 'gannetry-spit', 'ironstone-park', 'kestrel-flat', 'saltbridge-road'],
    reason: 'Gloves, irons, harness and boots go on and off in any order outside the barrier and off the pole.',
  },
  {
    isMeant: (it) => /^swap pic ask-wider-permit next-pole <> pic confirm-complete$/.test(it),
    at: ['ironstone-park'],
    reason: 'Asked early, the wider permit changes nothing at the first pole.',
  },
  {
    isMeant: (it) => /^swap so (set-local|motor-supply-off) .* <> so (motor-supply-off|lock) /.test(it),
    at: ['saltbridge-road'],
    reason: 'Three holds of one open switch, all on before it is reported isolated.',
  },
  {
    isMeant: (it) => /^swap pw bond-lv /.test(it),
    at: ['saltbridge-road'],
    reason: 'The wires of the low voltage are bonded one by one; the packs name no order among them.',
  },
  {
    isMeant: (it) => / sign-on$/.test(it),
    reason:
      'After a change of charge all sign on once more, each when free; the packs ask for the first signature only.',
  },
  {
    isMeant: (it) => /^swap (gw|pw|so|pic|pic-late) sign-on <> |^swap pic-late report-charge /.test(it),
    at: ['tamberly-street'],
    reason: 'Each signs when free; what else one does in that minute relies on nobody having signed.',
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
    const open = silent.filter(
      (variant) => !harmless.some(({ isMeant, at = [slug] }) => at.includes(slug) && isMeant(changeOf(variant))),
    )
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
