/** `expose --share` and `--chance`: the words, the file form, and what is refused. */
import { describe, expect, it } from 'vitest'
import { answerOfVerb } from '../support/answerOfVerb'

const livened = ['scenarios/marrow-bend', 'scenarios/marrow-bend/runs/clean-livened.json', '--at', '7003s'] as const

interface Told {
  readonly share?: {
    readonly person: string
    readonly withAllA: number
    readonly withNoneA: number
    readonly shares: readonly { readonly kind: string; readonly item: string | null; readonly shareA: number }[]
    readonly undivided: readonly { readonly kind: string }[]
  }
  readonly chance?: {
    readonly draws: number
    readonly judgedV: { readonly low: number; readonly middle: number; readonly high: number }
    readonly above: { readonly low: number; readonly share: number; readonly high: number }
    readonly fibrillation: { readonly low: number; readonly likely: number; readonly high: number }
  }
}

describe('expose --share', () => {
  it('divides the whole difference among the things, in the unit that the person is judged by', async () => {
    const { code, out } = await answerOfVerb('expose', ...livened, '--share', '--person', 'pw', '--json')
    const { share, chance } = JSON.parse(out) as Told
    expect(code).toBe(0)
    expect(chance).toBeUndefined()
    expect(share).toMatchObject({ person: 'pw', layers: 'hold', corner: 'declared' })
    const sum = share!.shares.reduce((total, it) => total + it.shareA, 0)
    expect(sum).toBeCloseTo(share!.withNoneA - share!.withAllA, 9)
    expect(share!.shares.length).toBe(10)
    expect(share!.undivided.length).toBeGreaterThan(0)
  })

  it('says in words what each took off, and what made it worse', async () => {
    const { out } = await answerOfVerb(
      'expose',
      ...livened,
      '--share',
      '--person',
      'bystander',
      '--livening',
      'clash-b',
    )
    expect(out).toMatch(/How much each thing mattered: .*Bystander/)
    expect(out).toMatch(/Barrier: \d+\sV/)
    expect(out).toMatch(/Lead E-07: added \d+\sV/)
  })

  it('where nothing reaches anybody it says so', async () => {
    const clean = ['scenarios/marrow-bend', 'scenarios/marrow-bend/runs/clean.json', '--at', '0s'] as const
    const { code, out } = await answerOfVerb('expose', ...clean, '--share')
    expect(code).toBe(0)
    expect(out).toContain('Nothing reaches anybody')
  })
})

describe('expose --chance', () => {
  it('tells quantiles, the share above with its interval, and the chance of fibrillation with its own', async () => {
    const { code, out } = await answerOfVerb('expose', ...livened, '--chance', '--draws', '10', '--json')
    const { chance } = JSON.parse(out) as Told
    expect(code).toBe(0)
    expect(chance!.draws).toBe(10)
    expect(chance!.judgedV.low).toBeLessThanOrEqual(chance!.judgedV.middle)
    // none of ten: Wilson's upper end is z²/(n + z²) = 3.8415/13.8415 by hand
    expect(chance!.above).toMatchObject({ share: 0, low: 0 })
    expect(chance!.above.high).toBeCloseTo(0.27753, 4)
    expect(chance!.fibrillation.low).toBeLessThanOrEqual(chance!.fibrillation.high)
    const words = await answerOfVerb('expose', ...livened, '--chance', '--draws', '10')
    expect(words.out).toContain('Above the limit in 0 of 10 draws')
    // the cover holds in all ten: both ends of the range read the same, and it is said once
    expect(words.out).toMatch(/Chance of fibrillation: < 0\.1\s%\.$/m)
  })
})

describe('what cannot be asked', () => {
  it.each([
    [['--share', '--person', 'nobody'], '--person'],
    [['--share', '--livening', 'rain'], '--livening'],
    [['--chance', '--draws', '0'], '--draws'],
    [['--chance', '--draws', 'many'], '--draws'],
  ])('%s', async (asked, named) => {
    const { code, err } = await answerOfVerb('expose', ...livened, ...asked)
    expect(code).toBe(2)
    expect(err).toContain(named)
  })
})
