/** One seed of one scenario: the job done by the demonstration, graded with the sweep, and what has to be looked at of it. */
import {
  demonstrate,
  drawScenario,
  judgeRun,
  type createSweepCache,
  type Pack,
  type Result,
  type ScenarioBase,
  type WorstExposure,
} from '../../src/engine'
import { digestOf } from '../../src/files/digest'

export interface SeedReport {
  readonly seed: number
  /** `done`, `declined: …` or `stuck: …`. */
  readonly ending: string
  readonly outcome: Result['outcome'] | null
  readonly struck: string | null
  readonly findings: readonly string[]
  /** Of the crew as they really stood, over all moments, livenings and corners. */
  readonly worstZone: string
  /** The bystander's pace over what the standard tolerates; below 1 is tolerable. */
  readonly pace: number
  /** What came over its limit, and why the pack does not claim to keep it off; `unexplained` when it does. */
  readonly over: readonly string[]
  readonly digest: string
}

type Cache = ReturnType<typeof createSweepCache>

export function soakSeed(base: ScenarioBase, pack: Pack, seed: number, cache: Cache): SeedReport {
  const scenario = drawScenario(base, seed, 'practise')
  try {
    const { timeline, declined } = demonstrate(scenario, pack)
    const result = judgeRun(timeline, pack, { sweep: true, cache })
    const crew = result.sweep.filter(({ person }) => person !== 'bystander')
    return {
      seed,
      ending: declined ? `declined: ${declined.why} ${declined.about}` : 'done',
      outcome: result.outcome,
      struck: timeline.struck?.livening ?? null,
      findings: result.findings
        .filter(({ recovered }) => !recovered)
        .map(({ severity, rule }) => `${severity} ${rule}`),
      worstZone:
        crew
          .map(({ exposure }) => exposure.zone)
          .sort()
          .at(-1) ?? 'none',
      pace: Math.max(0, ...result.sweep.filter(({ path }) => path === 'bystander-pace').map(overLimit)),
      over: [
        ...new Set(result.sweep.filter(({ verdict }) => verdict !== 'below').map((it) => explain(it, base, pack))),
      ],
      digest: digestOf(plain(result)),
    }
  } catch (error) {
    const ending = `stuck: ${error instanceof Error ? error.message : String(error)}`
    return { seed, ending, outcome: null, struck: null, findings: [], worstZone: 'none', pace: 0, over: [], digest: '' }
  }
}

const overLimit = ({ exposure, ratios }: WorstExposure): number =>
  Math.max(exposure.judged / exposure.limit, ...Object.values(ratios))

const plain = (result: Result): unknown => JSON.parse(JSON.stringify(result))

/** Paths from a hand on what is earthed to the pole that one stands against. */
const againstPole = ['hand-thigh', 'hand-pole', 'thigh-feet', 'leg-leg']

/**
 * Why a pack does not claim to keep an exposure off. It claims what it asks for: a pole that conducts is covered, the ground
 * inside the barrier is for those in boots, everything bonded is one potential.
 */
function explain({ person, path, livening, verdict }: WorstExposure, base: ScenarioBase, pack: Pack): string {
  const head = `${verdict} ${person} ${path} at ${livening}`
  const asksCover = pack.rules.some(({ parameters }) => JSON.stringify(parameters).includes('any-cover'))
  if (againstPole.includes(path) && base.pole.kind !== 'wood' && !asksCover) {
    return `${head}: the pack asks for no cover on a pole that conducts`
  }
  return `${head}: unexplained`
}
