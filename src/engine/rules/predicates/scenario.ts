/** Questions about the job itself, so that one pack serves several sites. */
import { findSectionNeutral } from '../../site/findSectionNeutral'
import { mayConduct } from '../../site/pole'
import { matchesAny, type Pattern } from '../language/pattern'
import type { SitePredicate } from '../language/predicate'

const concretePole: SitePredicate = {
  id: 'conductive-pole',
  says: 'the pole may conduct: all but oiled wood that is dry',
  about: 'site',
  takes: {},
  fails: ({ site }) => (mayConduct(site.scenario.pole) ? undefined : { why: 'pole-insulates' }),
}

const lvUnderBuild: SitePredicate = {
  id: 'low-voltage-on-pole',
  says: 'low-voltage wires hang on the pole',
  about: 'site',
  takes: {},
  fails: ({ site }) => (site.scenario.lv.wires.length > 0 ? undefined : { why: 'no-low-voltage' }),
}

const lineNeutral: SitePredicate = {
  id: 'neutral-on-line',
  says: 'the line has a neutral wire of its own',
  about: 'site',
  takes: {},
  fails: ({ site }) => (findSectionNeutral(site.scenario) === undefined ? { why: 'no-neutral' } : undefined),
}

const liveningStruck: SitePredicate = {
  id: 'line-came-alive',
  says: 'the line came alive during the job',
  about: 'site',
  takes: {},
  fails: ({ view }) => (view.timeline.struck === null ? { why: 'nothing-struck' } : undefined),
}

const provedOff: SitePredicate = {
  id: 'source-proved-off',
  says: 'nothing came alive, or the control room has proved the source off since',
  about: 'site',
  takes: {},
  fails: ({ site }) => (site.livening === null || site.livening.provedOff ? undefined : { why: 'not-proved-off' }),
}

const wasDone: SitePredicate = {
  id: 'was-done',
  says: 'one of these acts was done in this run',
  about: 'site',
  takes: { acts: { kind: 'patterns', least: 1, says: 'the acts' } },
  fails({ view }, given) {
    const acts = (Array.isArray(given['acts']) ? given['acts'] : [given['acts']]) as readonly Pattern[]
    return view.done.some((entry) => matchesAny(view, acts, entry)) ? undefined : { why: 'not-done' }
  },
}

export const scenarioPredicates = [wasDone, concretePole, lvUnderBuild, lineNeutral, liveningStruck, provedOff]
