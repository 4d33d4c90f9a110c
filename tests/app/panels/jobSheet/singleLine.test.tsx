/** The diagram and the facts of networks unlike marrow-bend's: everything on paper is there, nothing hidden is. */
import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { believe, startSite, type Scenario } from '../../../../src/engine'
import { SingleLine } from '../../../../src/app/panels/jobSheet/SingleLine'
import { layOut } from '../../../../src/app/panels/jobSheet/singleLineLayout'
import { lineWords, networkFacts, neutralNotes, poleWords } from '../../../../src/app/panels/jobSheet/networkWords'
import { english, makeSpeaker } from '../../../../src/text'
import { smallSet, smallTransformer } from '../../../engine/hazard/backFeedSites'
import { marrowBend } from '../../../support/marrowBend'
import { allOf, besides, coilEarthed, multiEarthed, singleWire, spur } from '../../../support/networks'

const speaker = makeSpeaker({
  ...english,
  'thing.f1': 'Feeder F1',
  'thing.f2': 'Feeder F2',
  'thing.fx': 'Crossing feeder',
  'thing.t1': 'Transformer T1',
  'thing.set-1': 'Set at the mill',
  'thing.p33': 'Line P33',
  'thing.lv': 'Low voltage',
})

const backFed = (): Partial<Scenario> => ({
  transformers: [{ ...smallTransformer, fuses: { link: 'K', rating: 6 } }],
  embedded: [smallSet],
})

function sheetOf(...changes: readonly ((scenario: Scenario) => Partial<Scenario>)[]) {
  const scenario = marrowBend(1)
  return believe(startSite({ ...scenario, ...allOf(...changes)(scenario) }))
}

const drawn = (belief: ReturnType<typeof sheetOf>): string =>
  renderToStaticMarkup(createElement(SingleLine, { belief, speaker }))

describe('the single-line diagram', () => {
  it('draws a transformer with what can feed the line through it, a line beside, a neutral wire', () => {
    const picture = drawn(sheetOf(backFed, besides(), multiEarthed()))
    for (const words of [
      'Transformer T1',
      '25 kVA',
      'Set at the mill, 5 kVA',
      'Line P33, 33 kV',
      'neutral wire, earthed every 100\u00a0m',
      'neutral earthed directly',
    ])
      expect(picture).toContain(words)
  })

  it('draws none of that where there is none', () => {
    const picture = drawn(sheetOf())
    for (const words of ['kVA', 'beside the line', 'neutral wire']) expect(picture).not.toContain(words)
    expect(picture).toContain('neutral on 6.35 Ω')
  })

  it('has everything on a row of its own, left of the far station and right of the near one', () => {
    const second = { ...smallTransformer, id: 't2', along: 210 }
    const { sheet } = sheetOf(() => ({ transformers: [smallTransformer, second], embedded: [smallSet] }), besides())
    const { drops, supply, tie, pole, lowVoltage } = layOut(sheet)
    const [far, near] = drops
    // west to east: 600 m west, transformer 120 m west, pole, transformer 210 m east, 400 m east
    expect([supply!.x, near!.x, pole, far!.x, tie!.x]).toEqual(
      [supply!.x, near!.x, pole, far!.x, tie!.x].sort((a, b) => a - b),
    )
    expect(near!.y).toBeGreaterThan(far!.y + 50)
    expect(lowVoltage).toBeGreaterThan(near!.y + 80)
  })

  it('shows nothing that is hidden: a main switch left closed, a blade that hangs', () => {
    const left = (lowVoltageClosed: boolean) => () => ({
      transformers: [{ ...smallTransformer, lowVoltageClosed }],
      embedded: [smallSet],
    })
    expect(drawn(sheetOf(left(true)))).toBe(drawn(sheetOf(left(false))))
    const hung = ({ switches }: Scenario) => ({
      switches: switches.map((it) => ({ ...it, hungBlades: ['B'] as const })),
    })
    expect(drawn(sheetOf(hung))).toBe(drawn(sheetOf()))
  })
})

describe('the facts on the order', () => {
  it('says what pole and line are', () => {
    const { pole } = marrowBend(1)
    const { height, armHeight, lvHeight, buttLength, diameter, armFixing, stepBoltFixing, stepBoltsTo, number } = pole
    const shape = { height, armHeight, lvHeight, buttLength, diameter, armFixing, stepBoltFixing, stepBoltsTo, number }
    const wood = { kind: 'wood', moisture: 'dry', treatment: 'oil', surface: 'dry', arm: 'wood', ...shape } as const
    const double = { ...wood, secondLeg: { at: { x: 0, y: 1.6 }, armFixing: 1000 } }
    expect(poleWords(sheetOf().sheet)).toBe('P117, concrete, 10.2\u00a0m with its butt')
    expect(poleWords(sheetOf(() => ({ pole: double })).sheet)).toBe(
      'P117, wood, 10.2\u00a0m with its butt, two legs, wooden arm',
    )
    expect(lineWords(sheetOf().sheet)).toBe('11 kV, 3 wires')
    expect(lineWords(sheetOf(spur).sheet)).toBe('11 kV, 2 wires')
    expect(lineWords(sheetOf(singleWire).sheet)).toBe('12.7 kV, one wire, earth is the return')
  })

  it('says how each neutral is earthed, once for those that are alike', () => {
    expect(neutralNotes(sheetOf(coilEarthed()).sheet, speaker)).toEqual([
      'Feeder F1, Feeder F2, Crossing feeder: neutral on a coil.',
    ])
    expect(neutralNotes(sheetOf(multiEarthed()).sheet, speaker)).toEqual([
      'Feeder F1, Feeder F2: neutral earthed directly.',
      'Crossing feeder: neutral on 6.35 Ω.',
    ])
  })

  it('says what hangs on the section and what can feed it from below', () => {
    const facts = networkFacts(sheetOf(backFed, besides()).sheet, speaker)
    expect(facts.map(({ name, words }) => `${name}: ${words}`)).toEqual([
      'Transformer T1: 25 kVA, three-phase, 120 m west, fuses 6 A K',
      'Set at the mill: generator, 5 kVA, behind Transformer T1',
      'Line P33: 33 kV, beside the line from 500 m west to 400 m east, stays live',
      'Low voltage: from another line, stays live',
    ])
  })
})
