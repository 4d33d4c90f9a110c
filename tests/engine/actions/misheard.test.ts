/**
 * A bad line: what control means, what comes over it, what is said back, who notices. Three-part messages (said, said
 * back, confirmed) are common practice, no source.
 */
import { describe, expect, test } from 'vitest'
import { findRemovedCause } from '../../../src/engine/site/liveningTraits'
import type { Livening } from '../../../src/engine/site/livening'
import { truths } from '../../../src/engine/rules/truths'
import type { Entry, Site } from '../../../src/engine'
import { before, done } from '../../support/cleanStages'
import { answering, withSwitch } from './talkCases'

const asked = { on: 'switch-27' }
const says = (site: Site, count: number): readonly string[] => site.evidence.slice(-count).map((it) => it.says)
const repeat = (site: Site, readBack: string): Site =>
  done(site, 'so', 'receive-step', { ...asked, values: { to: 'open', readBack } })
const badLine = (corrects?: boolean, site = before('receive-step')): Site =>
  answering(site, {
    misheard: [{ message: '27', saidAs: '31', ...(corrects === undefined ? {} : { corrects }) }],
  })
const rightFor = (id: string, site: Site, who: string, act: string, values: Readonly<Record<string, string>>) => {
  const order = { at: site.time, who, do: act, ...(act === 'receive-step' ? asked : {}), values }
  const entry = { index: 0, order, start: 0, end: 1, before: site, after: site, outcome: 'done' } as Entry
  return truths.get(id)!.right({ timeline: { scenario: site.scenario } } as never, entry)
}

describe('a switching step on a bad line', () => {
  test('is heard as it came, put right when it is said back, and plain from then on', () => {
    const heard = done(badLine(), 'so', 'hear-step', asked)
    expect(heard.evidence.at(-1)?.values).toEqual({ label: '31' })
    const wrong = repeat(heard, '31')
    expect(says(wrong, 1)).toEqual(['control.not-correct'])
    expect(wrong.evidence.at(-1)?.values).toEqual({ label: '27', readBack: '31' })
    expect(done(wrong, 'so', 'hear-step', asked).evidence.at(-1)?.values).toEqual({ label: '27' })
    expect(says(repeat(wrong, '27'), 2)).toEqual(['control.step-open', 'control.correct'])
  })

  test('that nobody corrects names the other device: what is then opened is that one', () => {
    const passed = repeat(badLine(false), '31')
    expect(says(passed, 1)).toEqual(['control.correct'])
    expect(passed.paper.step).toEqual({ switch: 'switch-31', to: 'open', readBack: '31' })
  })

  test('without the number is asked for again; a number turned round is not correct', () => {
    expect(says(repeat(before('receive-step'), 'understood'), 1)).toEqual(['control.say-number'])
    expect(says(repeat(before('receive-step'), '72'), 1)).toEqual(['control.not-correct'])
  })

  test('said back the other way round from what was heard is not correct', () => {
    const heard = done(before('receive-step'), 'so', 'hear-step', asked)
    const closed = done(heard, 'so', 'receive-step', { ...asked, values: { to: 'closed', readBack: '27' } })
    expect(says(closed, 1)).toEqual(['control.not-correct-open'])
  })

  test('whoever says back what came over the line has said it right; a number of their own is not', () => {
    const site = badLine()
    expect(rightFor('switch-label', site, 'so', 'receive-step', { to: 'open', readBack: '31' })).toEqual(['31'])
    expect(rightFor('switch-label', site, 'so', 'receive-step', { to: 'open', readBack: '72' })).toEqual(['27'])
    const clear = before('receive-step')
    expect(rightFor('switch-label', clear, 'so', 'receive-step', { to: 'open', readBack: '31' })).toEqual(['27'])
  })
})

describe('a permit on a bad line', () => {
  const permit = { number: '4711', until: 54_000 }
  const limits = '#4711 P117 27 31 @54000'
  const taking = (corrects: boolean): Site =>
    answering(before('take-permit'), { permit, misheard: [{ message: '4711', saidAs: '4771', corrects }] })
  const take = (site: Site, readBack: string): Site => done(site, 'pic', 'take-permit', { values: { readBack } })

  test('is read out as it comes, and given only on what control said', () => {
    const heard = done(taking(true), 'pic', 'hear-permit')
    expect(heard.evidence.at(-1)?.values).toEqual({ readBack: '#4771 P117 27 31 @54000' })
    const wrong = take(heard, '#4771 P117 27 31 @54000')
    expect([wrong.paper.permit, ...says(wrong, 1)]).toEqual(['none', 'control.permit-not-correct'])
    expect(take(wrong, limits).paper.permit).toBe('held')
    expect(take(taking(true), '#4711 P117 27 31').paper.permit).toBe('none')
  })

  test('that nobody corrects is held as it was said back', () => {
    const held = take(taking(false), '#4771 P117 27 31 @54000')
    expect([held.paper.permit, held.written['permit']]).toEqual(['held', '#4771 P117 27 31 @54000'])
  })
})

describe('what takes a cause away', () => {
  const clash: Livening = { id: 'c', kind: 'clash', feeder: 'fx', phase: 'B', impedance: 0.1 }
  const remote: Livening = { id: 'r', kind: 'remote-close', switch: 'switch-27' }

  test('a guard at the crossing keeps a conductor of the other line away', () => {
    const site = answering(before('read-order'), { guardsCrossing: true })
    expect(findRemovedCause(site, clash)).toBeUndefined()
    expect(findRemovedCause(done(site, 'pic', 'ask-crossing-guard', { on: 'fx' }), clash)).toBe('crossing-guarded')
  })

  test('without supply the drive closes nothing', () => {
    const site = withSwitch(before('open-switch'), 'switch-27', { remote: true, motorSupply: true })
    const onRemote = {
      ...site,
      switches: { ...site.switches, 'switch-27': { ...site.switches['switch-27']!, control: 'remote' as const } },
    }
    expect(findRemovedCause(onRemote, remote)).toBeUndefined()
    expect(findRemovedCause(done(onRemote, 'so', 'motor-supply-off', asked), remote)).toBe('motor-supply-off')
  })
})
