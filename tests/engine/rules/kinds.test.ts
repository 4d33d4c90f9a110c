/** Each kind of rule by itself, on runs written by hand: what it finds, what it lets pass, and the nearest it lets pass. */
import { describe, expect, it } from 'vitest'
import { findFindings } from '../../../src/engine/rules/findFindings'
import type { Timeline } from '../../../src/engine/timeline/timeline'
import { fakeRun, type FakeAct } from '../../support/rules/fakeRun'
import { onePack, type ShortRule } from '../../support/rules/onePack'

const act = (who: string, verb: string, more: Partial<FakeAct> = {}): FakeAct => ({ who, do: verb, ...more })

function found(rule: ShortRule, run: Timeline | readonly FakeAct[]): readonly (readonly [number, number])[] {
  const timeline = 'moments' in run ? run : fakeRun(run)
  return findFindings(timeline, onePack(rule)).map((finding) => [finding.entry, finding.at] as const)
}

const wires = ['conductor-a', 'conductor-b', 'conductor-c'] as const
const onWires = (verb: string, ...letters: readonly string[]): readonly FakeAct[] =>
  letters.map((letter) => act('pw', verb, { on: `conductor-${letter}` }))

describe('order', () => {
  const rule: ShortRule = { kind: 'order', parameters: { steps: [{ do: 'tie-on' }, { do: 'haul' }, { do: 'clamp' }] } }

  it('finds the first act that overtakes', () => {
    expect(found(rule, [act('gw', 'tie-on'), act('pw', 'clamp'), act('pw', 'haul')])).toEqual([[1, 10]])
  })

  it('passes over a step that never came', () => {
    expect(found(rule, [act('gw', 'tie-on'), act('pw', 'clamp')])).toEqual([])
  })

  it('finds a later step begun while the earlier one is still going on', () => {
    expect(found(rule, [act('gw', 'tie-on', { takes: 30 }), act('pw', 'haul', { at: 29 })])).toEqual([[1, 29]])
    expect(found(rule, [act('gw', 'tie-on', { takes: 30 }), act('pw', 'haul', { at: 30 })])).toEqual([])
  })

  it('holds for each item by itself where asked', () => {
    const steps = [{ do: 'look' }, { do: 'judge' }]
    const run = [
      act('gw', 'look', { on: 'E-07' }),
      act('gw', 'judge', { on: 'E-07' }),
      act('gw', 'look', { on: 'B-02' }),
    ]
    expect(found({ kind: 'order', parameters: { steps, same: 'item' } }, run)).toEqual([])
    expect(found({ kind: 'order', parameters: { steps } }, run)).toHaveLength(1)
  })

  it('stops where it is told to', () => {
    const parameters = { steps: [{ do: 'a' }, { do: 'b' }], to: { do: 'end' } }
    expect(found({ kind: 'order', parameters }, [act('pw', 'b'), act('pw', 'end'), act('pw', 'a')])).toEqual([])
    expect(found({ kind: 'order', parameters }, [act('pw', 'b'), act('pw', 'a'), act('pw', 'end')])).toHaveLength(1)
  })
})

describe('done-before', () => {
  const parameters = { need: { do: 'test' }, before: { do: 'clamp' }, link: [['on', 'on']] }
  const rule: ShortRule = { kind: 'done-before', parameters }

  it('asks for the same wire', () => {
    expect(found(rule, [...onWires('test', 'a'), ...onWires('clamp', 'b')])).toEqual([[1, 10]])
    expect(found(rule, [...onWires('test', 'a'), ...onWires('clamp', 'a')])).toEqual([])
  })

  it('asks for it to be finished, not only begun', () => {
    const test = act('pw', 'test', { on: 'conductor-a', takes: 20 })
    expect(found(rule, [test, act('gw', 'clamp', { on: 'conductor-a', at: 19 })])).toHaveLength(1)
    expect(found(rule, [test, act('gw', 'clamp', { on: 'conductor-a', at: 20 })])).toEqual([])
  })

  it('lets an older doing count no longer', () => {
    const since: ShortRule = { kind: 'done-before', parameters: { ...parameters, since: { do: 'permit' } } }
    const late = [act('pic', 'permit'), ...onWires('test', 'a'), ...onWires('clamp', 'a')]
    const early = [...onWires('test', 'a'), act('pic', 'permit'), ...onWires('clamp', 'a')]
    expect(found(since, late)).toEqual([])
    expect(found(since, early)).toEqual([[2, 20]])
  })

  it('lets a need go stale', () => {
    const within: ShortRule = { kind: 'done-before', parameters: { ...parameters, within: 60 } }
    const at = (second: number) => [...onWires('test', 'a'), act('pw', 'clamp', { on: 'conductor-a', at: second })]
    expect(found(within, at(70))).toEqual([])
    expect(found(within, at(71))).toEqual([[1, 71]])
  })

  it('passes over what never came where another rule says that', () => {
    const ifEver: ShortRule = { kind: 'done-before', parameters: { ...parameters, ifEver: true } }
    expect(found(ifEver, onWires('clamp', 'a'))).toEqual([])
    expect(found(ifEver, [...onWires('clamp', 'a'), ...onWires('test', 'a')])).toEqual([[0, 0]])
  })

  it('is missed at the end only where it is always needed', () => {
    const always: ShortRule = { kind: 'done-before', parameters: { ...parameters, always: true } }
    expect(found(always, [act('pic', 'watch')])).toEqual([[-1, 10]])
    expect(found(rule, [act('pic', 'watch')])).toEqual([])
  })

  it('is asked for each member of a set', () => {
    const each: ShortRule = {
      kind: 'done-before',
      parameters: { forEach: 'conductors', need: { do: 'test', on: '$each' }, before: { do: 'clamp' } },
    }
    expect(found(each, [...onWires('test', 'a', 'c'), ...onWires('clamp', 'a')])).toEqual([[2, 20]])
    expect(found(each, [...onWires('test', 'a', 'b', 'c'), ...onWires('clamp', 'a')])).toEqual([])
  })

  it('counts refused and withdrawn orders as not done', () => {
    for (const outcome of ['refused', 'withdrawn'] as const) {
      const test = act('pw', 'test', { on: 'conductor-a', outcome })
      expect(found(rule, [test, ...onWires('clamp', 'a')]), outcome).toHaveLength(1)
    }
  })
})

describe('prove-around', () => {
  const parameters = { prove: { do: 'prove' }, test: { do: 'test' }, relies: { do: 'clamp' }, within: 60 }
  const before: ShortRule = { kind: 'prove-around', parameters: { ...parameters, side: 'before' } }
  const after: ShortRule = { kind: 'prove-around', parameters: { ...parameters, side: 'after' } }
  const prove = act('pw', 'prove', { with: 'D-04' })
  const test = (letter: string, more: Partial<FakeAct> = {}) =>
    act('pw', 'test', { with: 'D-04', on: `conductor-${letter}`, ...more })

  it('keeps a series between two provings', () => {
    const run = [prove, test('a'), test('b'), prove, act('pw', 'clamp')]
    expect(found(before, run)).toEqual([])
    expect(found(after, run)).toEqual([])
  })

  it('finds the proving that is missing, on its side only', () => {
    const noFirst = [test('a'), prove, act('pw', 'clamp')]
    expect(found(before, noFirst)).toEqual([[0, 0]])
    expect(found(after, noFirst)).toEqual([])
    const noSecond = [prove, test('a'), act('pw', 'clamp')]
    expect(found(before, noSecond)).toEqual([])
    expect(found(after, noSecond)).toEqual([[2, 20]])
  })

  it('finds a series that nobody ended', () => {
    expect(found(after, [prove, test('a')])).toEqual([[-1, 20]])
  })

  it('lets the proving after one series serve the next, but not one on another tester', () => {
    expect(found(before, [prove, test('a'), prove, test('b'), prove])).toEqual([])
    expect(found(before, [act('pw', 'prove', { with: 'D-09' }), test('a'), prove])).toHaveLength(1)
  })

  it('lets a proving go stale', () => {
    expect(found(before, [prove, test('a', { at: 70 }), prove])).toEqual([])
    expect(found(before, [prove, test('a', { at: 71 }), prove])).toEqual([[1, 71]])
  })
})

describe('state-at', () => {
  const rule = (moment: string): ShortRule => ({
    kind: 'state-at',
    parameters: { when: { do: 'fit' }, holds: 'barrier-up', moment },
  })
  const barrier = [
    { x: -8, y: -8 },
    { x: 8, y: -8 },
    { x: 0, y: 12 },
  ]

  it('asks before or after the act', () => {
    const run = [act('gw', 'fit', { leaves: { barrier } })]
    expect(found(rule('before'), run)).toEqual([[0, 0]])
    expect(found(rule('after'), run)).toEqual([])
  })

  it('asks at the end of the run', () => {
    const atEnd: ShortRule = { kind: 'state-at', parameters: { atEnd: true, holds: 'barrier-up' } }
    expect(found(atEnd, [act('gw', 'fit')])).toEqual([[-1, 10]])
    expect(found(atEnd, [act('gw', 'fit', { leaves: { barrier } })])).toEqual([])
  })

  it('combines questions by not, allOf and anyOf', () => {
    const holds = (call: unknown): ShortRule => ({ kind: 'state-at', parameters: { when: { do: 'fit' }, holds: call } })
    const run = [act('gw', 'fit')]
    expect(found(holds({ not: 'barrier-up' }), run)).toEqual([])
    expect(found(holds({ anyOf: ['barrier-up', { not: 'any-cover' }] }), run)).toEqual([])
    expect(found(holds({ allOf: ['barrier-up', { not: 'any-cover' }] }), run)).toHaveLength(1)
  })
})

describe('one-of', () => {
  const rule: ShortRule = {
    kind: 'one-of',
    parameters: { when: { do: 'untie' }, anyOf: ['any-cover', 'metal-bonded'] },
  }

  it('is content with one of the alternatives', () => {
    expect(found(rule, [act('pw', 'untie')])).toEqual([[0, 0]])
    const cover = { item: 'C-15', from: 7, to: 8.3, checked: false }
    expect(found(rule, [act('pw', 'fit-cover', { leaves: { cover } }), act('pw', 'untie')])).toEqual([])
  })
})

describe('invariant-during', () => {
  const parameters = { from: { do: 'start' }, to: { do: 'stop' }, each: 'site', holds: 'barrier-up' }
  const rule: ShortRule = { kind: 'invariant-during', parameters }
  const barrier = [
    { x: -8, y: -8 },
    { x: 8, y: -8 },
    { x: 0, y: 12 },
  ]

  it('holds from the end of the first to the start of the last', () => {
    const kept = [
      act('gw', 'start', { leaves: { barrier } }),
      act('gw', 'work'),
      act('gw', 'stop', { leaves: { barrier: null } }),
      act('gw', 'rest'),
    ]
    const lost = [
      act('gw', 'start', { leaves: { barrier } }),
      act('gw', 'work', { leaves: { barrier: null } }),
      act('gw', 'rest'),
      act('gw', 'stop'),
    ]
    expect(found(rule, kept)).toEqual([])
    expect(found(rule, lost)).toEqual([[2, 20]])
  })

  it('is not asked when its stretch never began', () => {
    expect(found(rule, [act('gw', 'work')])).toEqual([])
  })

  it('is asked of everybody whom it concerns', () => {
    const briefed: ShortRule = {
      kind: 'invariant-during',
      parameters: { each: 'crew', roles: ['pole-worker', 'ground-worker'], holds: 'briefed' },
    }
    expect(findFindings(fakeRun([act('pic', 'x')]), onePack(briefed)).map((it) => it.who)).toEqual(['gw', 'pw'])
  })
})

describe('count', () => {
  const rule = (parameters: object): ShortRule => ({
    kind: 'count',
    parameters: { of: { do: 'clamp' }, ...parameters },
  })

  it('counts at least and at most', () => {
    expect(found(rule({ least: 3 }), onWires('clamp', 'a', 'b'))).toEqual([[-1, 20]])
    expect(found(rule({ least: 2 }), onWires('clamp', 'a', 'b'))).toEqual([])
    expect(found(rule({ most: 1 }), onWires('clamp', 'a', 'b'))).toEqual([[1, 10]])
    expect(found(rule({ most: 2 }), onWires('clamp', 'a', 'b'))).toEqual([])
  })

  it('counts different wires once', () => {
    expect(found(rule({ least: 2, different: 'on' }), onWires('clamp', 'a', 'a'))).toHaveLength(1)
    expect(found(rule({ least: 2, different: 'on' }), onWires('clamp', 'a', 'b'))).toEqual([])
  })

  it('counts up to an act and names it', () => {
    const run = [...onWires('clamp', 'a'), act('pic', 'safe'), ...onWires('clamp', 'b')]
    expect(found(rule({ least: 2, to: { do: 'safe' } }), run)).toEqual([[1, 10]])
    expect(found(rule({ least: 1, to: { do: 'safe' } }), run)).toEqual([])
  })
})

describe('geometry', () => {
  const rule: ShortRule = {
    kind: 'geometry',
    parameters: { when: { do: 'drive-rod' }, measure: 'rod-to-pole', least: 3 },
  }
  const drive = (x: number): FakeAct =>
    act('gw', 'drive-rod', { leaves: { rods: [{ item: 'R-1', at: { x, y: 0 }, depth: 1.8 }] } })

  it('measures to a centimetre', () => {
    expect(found(rule, [drive(2.99)])).toEqual([[0, 0]])
    expect(found(rule, [drive(2.996)])).toEqual([])
    expect(found(rule, [drive(3)])).toEqual([])
  })
})

describe('by-whom', () => {
  const rule: ShortRule = { kind: 'by-whom', parameters: { of: { do: ['haul', 'lower'] }, roles: ['pole-worker'] } }

  it('finds the wrong role', () => {
    expect(found(rule, [act('gw', 'haul')])).toEqual([[0, 0]])
    expect(found(rule, [act('pw', 'haul'), act('gw', 'tie-on')])).toEqual([])
  })
})

describe('across', () => {
  const rule = (way: string): ShortRule => ({
    kind: 'across',
    parameters: { of: { do: 'clamp' }, way, as: { do: 'test' } },
  })

  it('goes from one side to the other, either way', () => {
    expect(found(rule('either'), onWires('clamp', 'a', 'b', 'c'))).toEqual([])
    expect(found(rule('either'), onWires('clamp', 'c', 'b', 'a'))).toEqual([])
    expect(found(rule('either'), onWires('clamp', 'a', 'c', 'b'))).toEqual([[2, 20]])
    expect(found(rule('either'), onWires('clamp', 'b', 'a', 'c'))).toEqual([[2, 20]])
  })

  it('passes over none that is not done: along the row, or from the middle outward', () => {
    for (const order of ['abc', 'cba', 'bac', 'bca']) {
      expect(found(rule('over-none'), onWires('clamp', ...order)), order).toEqual([])
    }
    expect(found(rule('over-none'), onWires('clamp', 'a', 'c', 'b'))).toEqual([[1, 10]])
    expect(found(rule('over-none'), onWires('clamp', 'c', 'a', 'b'))).toEqual([[1, 10]])
  })

  it('goes in the very order of other acts, whatever it was', () => {
    const tested = onWires('test', 'b', 'a', 'c')
    expect(found(rule('same-as'), [...tested, ...onWires('clamp', 'b', 'a', 'c')])).toEqual([])
    expect(found(rule('same-as'), [...tested, ...onWires('clamp', 'a', 'b', 'c')])).toEqual([[4, 40]])
    expect(found(rule('against'), [...tested, ...onWires('clamp', 'c', 'a', 'b')])).toEqual([])
  })

  it('goes the way of other acts, or against them', () => {
    const tested = onWires('test', 'a', 'b', 'c')
    expect(found(rule('same-as'), [...tested, ...onWires('clamp', 'a', 'b')])).toEqual([])
    expect(found(rule('same-as'), [...tested, ...onWires('clamp', 'b', 'a')])).toEqual([[4, 40]])
    expect(found(rule('against'), [...tested, ...onWires('clamp', 'b', 'a')])).toEqual([])
    expect(found(rule('against'), [...tested, ...onWires('clamp', 'a', 'b')])).toHaveLength(1)
  })

  it('begins again when a wire is done again, and takes blades switch by switch', () => {
    expect(found(rule('either'), [...onWires('clamp', 'a', 'b', 'c'), ...onWires('clamp', 'a', 'b', 'c')])).toEqual([])
    const blades: ShortRule = { kind: 'across', parameters: { of: { do: 'look' }, way: 'either' } }
    const look = (on: string) => act('so', 'look', { on })
    const fine = ['switch-27/A', 'switch-27/B', 'switch-27/C', 'switch-31/A', 'switch-31/B', 'switch-31/C'].map(look)
    expect(found(blades, fine)).toEqual([])
    expect(found(blades, ['switch-27/A', 'switch-27/C', 'switch-27/B'].map(look))).toHaveLength(1)
  })
})

describe('follow', () => {
  const rule: ShortRule = {
    kind: 'follow',
    parameters: { after: { do: 'clamp' }, next: { do: 'tug' }, link: [['on', 'on']] },
  }

  it('asks for the next act of the same person, on the same wire', () => {
    expect(found(rule, [...onWires('clamp', 'a'), act('gw', 'watch'), ...onWires('tug', 'a')])).toEqual([])
    expect(found(rule, [...onWires('clamp', 'a'), ...onWires('tug', 'b')])).toEqual([[1, 10]])
    expect(found(rule, [...onWires('clamp', 'a', 'b'), ...onWires('tug', 'a', 'b')])).toEqual([
      [1, 10],
      [2, 20],
    ])
  })

  it('is missed when nothing followed', () => {
    expect(found(rule, onWires('clamp', 'a'))).toEqual([[-1, 10]])
  })
})

describe('lead-order', () => {
  const on: ShortRule = { kind: 'lead-order', parameters: { types: ['earth-lead'], deadEnd: 'earth', going: 'on' } }
  const off: ShortRule = { kind: 'lead-order', parameters: { types: ['earth-lead'], deadEnd: 'earth', going: 'off' } }
  const clamp = (lead: string, end: string) => ({
    lead,
    end,
    on: end === 'earth' ? 'rod/R-1' : 'conductor-a',
    turns: 6,
    brushed: true,
    tugged: true,
  })
  const earth = clamp('E-07', 'earth')
  const first = clamp('E-07', '1')

  it('asks for the earth end of the same lead first', () => {
    expect(found(on, [act('pw', 'clamp', { leaves: { clamps: [first] } })])).toEqual([[0, 0]])
    expect(
      found(on, [
        act('gw', 'earth', { leaves: { clamps: [earth] } }),
        act('pw', 'clamp', { leaves: { clamps: [earth, first] } }),
      ]),
    ).toEqual([])
    const other = clamp('E-08', 'earth')
    expect(
      found(on, [
        act('gw', 'earth', { leaves: { clamps: [other] } }),
        act('pw', 'clamp', { leaves: { clamps: [other, first] } }),
      ]),
    ).toHaveLength(1)
  })

  it('asks for it last when they come off', () => {
    const both = act('pw', 'both', { leaves: { clamps: [earth, first] } })
    expect(found(off, [both, act('gw', 'off', { leaves: { clamps: [first] } })])).toEqual([[1, 10]])
    expect(
      found(off, [
        both,
        act('pw', 'off', { leaves: { clamps: [earth] } }),
        act('gw', 'off', { leaves: { clamps: [] } }),
      ]),
    ).toEqual([])
  })

  it('says nothing of other leads', () => {
    const bond = { ...clamp('B-02', 'line'), on: 'conductor-b' }
    expect(found(on, [act('pw', 'bond', { leaves: { clamps: [bond] } })])).toEqual([])
  })
})

describe('judgement', () => {
  const rule = (fault: string): ShortRule => ({
    kind: 'judgement',
    parameters: {
      types: ['boots', 'operating-stick'],
      fault,
      evidence: ['label', 'look', 'test'],
      judged: { do: 'judge' },
      used: { do: 'wear' },
    },
  })
  const judge = (on: string, verdict: string, more: Partial<FakeAct> = {}): FakeAct =>
    act('gw', 'judge', { on, values: { verdict }, ...more })
  const wear = (on: string): FakeAct => act('pw', 'wear', { on })
  const seen = (of: string, ...by: readonly ('label' | 'look' | 'test')[]) => ({
    evidence: by.map((each) => ({ at: 0, who: 'gw', of, by: each, says: 'seen', values: {} })),
  })

  it('asks for a verdict before use', () => {
    expect(found(rule('not-judged'), [wear('BT-43')])).toEqual([[0, 0]])
    expect(found(rule('not-judged'), [judge('BT-43', 'pass'), wear('BT-43')])).toEqual([])
    expect(found(rule('not-judged'), [judge('BT-41', 'pass'), wear('BT-43')])).toHaveLength(1)
  })

  it('asks for every kind of evidence that the item can give', () => {
    const looked = act('gw', 'inspect', { leaves: seen('BT-43', 'label', 'look') })
    const all = act('gw', 'inspect', { leaves: seen('BT-43', 'label', 'look', 'test') })
    expect(found(rule('no-evidence'), [looked, judge('BT-43', 'pass')])).toEqual([[1, 10]])
    expect(found(rule('no-evidence'), [all, judge('BT-43', 'pass')])).toEqual([])
    expect(found(rule('no-evidence'), [judge('BT-43', 'quarantine')])).toEqual([])
  })

  it('finds the unsound item that was passed and used, not one that was only passed', () => {
    expect(found(rule('missed-defect'), [judge('BT-42', 'pass'), wear('BT-42')])).toEqual([[1, 10]])
    expect(found(rule('missed-defect'), [judge('BT-42', 'pass')])).toEqual([])
    expect(found(rule('missed-defect'), [judge('BT-43', 'pass'), wear('BT-43')])).toEqual([])
  })

  it('finds the sound item that was refused, and use after refusal', () => {
    expect(found(rule('sound-refused'), [judge('BT-43', 'quarantine')])).toEqual([[0, 0]])
    expect(found(rule('sound-refused'), [judge('BT-42', 'quarantine')])).toEqual([])
    expect(found(rule('used-refused'), [judge('BT-42', 'quarantine'), wear('BT-42')])).toEqual([[1, 10]])
    expect(found(rule('used-refused'), [judge('BT-42', 'quarantine'), wear('BT-45')])).toEqual([])
  })
})

describe('stated', () => {
  const rule: ShortRule = {
    kind: 'stated',
    parameters: { of: { do: 'receive-step' }, value: 'readBack', truth: 'switch-label' },
  }
  const say = (readBack: string) => act('so', 'receive-step', { on: 'switch-27', values: { to: 'open', readBack } })

  it('compares a read-back with the device', () => {
    expect(found(rule, [say('37')])).toEqual([[0, 0]])
    expect(found(rule, [say('27')])).toEqual([])
  })

  it('compares lists as sets, and lets harmless extras pass', () => {
    const sources: ShortRule = {
      kind: 'stated',
      parameters: { of: { do: 'read-order' }, value: 'sources', truth: 'sources' },
    }
    const read = (...list: readonly string[]) => [act('pic', 'read-order', { values: { sources: list } })]
    expect(found(sources, read('lv', 'fx', 'f1', 'f2'))).toEqual([])
    expect(found(sources, read('lv', 'fx', 'f1', 'f2', 'switch-27'))).toEqual([])
    expect(found(sources, read('lv', 'fx', 'f1'))).toHaveLength(1)
    expect(found(sources, read('lv', 'fx', 'f1', 'f2', 'street-light'))).toHaveLength(1)
  })
})

describe('repeat', () => {
  const rule: ShortRule = { kind: 'repeat', parameters: { of: { do: '*' }, except: { do: 'wait' } } }

  it('finds the same act again at once, by the same person', () => {
    expect(found(rule, [...onWires('test', 'a', 'a')])).toEqual([[1, 10]])
    expect(found(rule, [...onWires('test', 'a', 'b', 'a')])).toEqual([])
    expect(found(rule, [act('pw', 'wait'), act('pw', 'wait')])).toEqual([])
    expect(found(rule, [act('pw', 'watch'), act('gw', 'watch')])).toEqual([])
  })
})

describe('one-at-a-time', () => {
  const rule: ShortRule = {
    kind: 'one-at-a-time',
    parameters: { of: { do: ['look', 'test-item'] }, ends: { do: 'judge' }, part: 'item' },
  }
  const on = (verb: string, item: string) => act('gw', verb, { on: item })

  it('finds the second item begun before the first is finished', () => {
    expect(
      found(rule, [on('look', 'E-07'), on('look', 'B-02'), on('judge', 'E-07'), on('judge', 'B-02')]).length,
    ).toBeGreaterThan(0)
    expect(found(rule, [on('look', 'E-07'), on('judge', 'E-07'), on('look', 'B-02'), on('judge', 'B-02')])).toEqual([])
    expect(found(rule, [on('look', 'E-07'), act('pw', 'look', { on: 'B-02' }), on('judge', 'E-07')])).toEqual([])
  })
})

describe('response-after-livening', () => {
  const parameters = { need: { do: 'ask-source-off' }, before: { do: 'climb' } }
  const rule: ShortRule = { kind: 'response-after-livening', parameters }
  const struck = { struck: { livening: 'clash-b', at: 15, moment: 1 } }

  it('holds acts back until the need is done', () => {
    const hasty = [act('pw', 'untie'), act('pw', 'x'), act('pw', 'climb')]
    expect(found(rule, fakeRun(hasty, struck))).toEqual([[2, 20]])
    const patient = [act('pw', 'untie'), act('pw', 'x'), act('pic', 'ask-source-off'), act('pw', 'climb')]
    expect(found(rule, fakeRun(patient, struck))).toEqual([])
  })

  it('asks nothing when nothing struck, nor of what was done before', () => {
    expect(found(rule, [act('pw', 'climb')])).toEqual([])
    expect(found(rule, fakeRun([act('pw', 'climb'), act('pw', 'x')], struck))).toEqual([])
  })

  it('asks for a need in time', () => {
    const soon: ShortRule = {
      kind: 'response-after-livening',
      parameters: { need: { do: 'call-control' }, within: 30 },
    }
    expect(found(soon, fakeRun([act('pic', 'call-control', { at: 45 })], struck))).toEqual([])
    expect(found(soon, fakeRun([act('pic', 'call-control', { at: 46 })], struck))).toEqual([[-1, 45]])
  })
})

describe('plan', () => {
  const rule = (ask: string): ShortRule => ({
    kind: 'plan',
    parameters: {
      written: { do: 'write-plan' },
      value: 'cards',
      ask,
      cards: ['clamp-earth-end:*', 'clamp:*', 'bond-line:*'],
    },
  })
  const write = (...cards: readonly string[]) => [act('pic', 'write-plan', { values: { cards } })]

  it('asks for the cards and for their order, each by itself', () => {
    const good = write(
      'clamp-earth-end:E-07:rod',
      'clamp:E-07:conductor-a',
      'clamp:E-07:conductor-b',
      'bond-line:B-02:conductor-b',
    )
    expect(found(rule('present'), good)).toEqual([])
    expect(found(rule('order'), good)).toEqual([])
    const turned = write('clamp:E-07:conductor-a', 'clamp-earth-end:E-07:rod', 'bond-line:B-02:conductor-b')
    expect(found(rule('present'), turned)).toEqual([])
    expect(found(rule('order'), turned)).toEqual([[0, 0]])
    const short = write('clamp-earth-end:E-07:rod', 'clamp:E-07:conductor-a')
    expect(found(rule('present'), short)).toEqual([[0, 0]])
    expect(found(rule('order'), short)).toEqual([])
  })

  it('grades the last plan written', () => {
    const run = [
      ...write('clamp:E-07:conductor-a'),
      ...write('clamp-earth-end:E-07:rod', 'clamp:E-07:conductor-a', 'bond-line:B-02:x'),
    ]
    expect(found(rule('present'), run)).toEqual([])
  })
})

it('uses the three wires of the scenario', () => {
  expect(fakeRun([]).scenario.conductors.map(({ id }) => id)).toEqual(wires)
})
