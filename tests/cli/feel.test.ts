/** `expose --feel`: what would reach a bare body at a place, in words and as a file, and what is refused. */
import { describe, expect, it } from 'vitest'
import { answerOfVerb } from '../support/answerOfVerb'

const livened = ['scenarios/marrow-bend', 'scenarios/marrow-bend/runs/clean-livened.json', '--at', '7003s'] as const

interface Told {
  readonly felt: readonly {
    readonly livening: string
    readonly exposure: null | {
      readonly path: string
      readonly shockPath: string
      readonly prospectiveVoltageV: number
      readonly bodyCurrentA: number
    }
  }[]
}

const feelOf = async (feel: string): Promise<Told['felt'][number]> => {
  const { out, code } = await answerOfVerb('expose', ...livened, '--feel', feel, '--livening', 'clash-b', '--json')
  expect(code).toBe(0)
  return (JSON.parse(out) as Told).felt[0]!
}

describe('expose --feel', () => {
  it('hands on lifted wire and pole: the difference of the two, and nine hundred ohms let amperes through', async () => {
    const { exposure } = await feelOf('hands:conductor-b,stay-lower')
    // The run's own circuit at that instant: conductor B 5.63 kV, lower stay 0.68 kV.
    expect(exposure!.prospectiveVoltageV).toBeGreaterThan(4800)
    expect(exposure!.prospectiveVoltageV).toBeLessThan(5100)
    expect(exposure!.shockPath).toBe('hand-hand')
    // IEC 60479-1 table 1: some 0.6 to 1 kΩ from hand to hand above 1000 V (from memory).
    expect(exposure!.bodyCurrentA).toBeGreaterThan(3)
    expect(exposure!.bodyCurrentA).toBeLessThan(9)
  })

  it('both hands on things that the bond joins: nothing that is felt', async () => {
    const { exposure } = await feelOf('hands:arm,conductor-b')
    expect(exposure === null || exposure.bodyCurrentA < 0.0005).toBe(true)
  })

  it('a place in a sentence, for each livening when none is named', async () => {
    const { out } = await answerOfVerb('expose', ...livened, '--feel', 'pace:4,-2.35')
    const lines = out.trim().split('\n')
    expect(lines).toHaveLength(7)
    expect(out).toMatch(/Between the feet about [\d\s]+\sV, tolerable 120\sV for 2.4\ss/)
  })

  it.each([['pace:1'], ['pace:1,x'], ['touch:1,101'], ['hands:arm,nowhere'], ['hands:arm'], ['elbow:1,1']])(
    'refuses %s with what is allowed',
    async (feel) => {
      const { code, err } = await answerOfVerb('expose', ...livened, '--feel', feel)
      expect(code).toBe(2)
      expect(err).toContain(`--feel: found ${feel}; allowed:`)
    },
  )
})
