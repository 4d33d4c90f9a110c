/** What acts at a transformer leave: rows of applies.test.ts. */
import type { Site } from '../../../src/engine'
import { before, done, type Said } from '../../support/cleanStages'
import { backFed, besideTransformer } from '../hazard/backFeedSites'

type Case = readonly [
  act: string,
  site: () => Site,
  who: string,
  said: Said,
  what: (site: Site) => unknown,
  is: unknown,
]

const atHandle = (): Site => before('open-switch')
const last = (site: Site): string => site.evidence.at(-1)?.says ?? ''

/** Beside the transformer, the livening on and seen by nobody: what takes its way proves it off. */
function backFedNow(item: string): Site {
  const site = besideTransformer(backFed()(atHandle()), item)
  return { ...site, livening: { id: 'set-on', at: 0, cleared: false, provedOff: false } }
}

const withMainOpen = (item: string): Site => done(backFedNow(item), 'so', 'open-main', { on: 't1' })

/** The detector at the isolated line, with the set on behind the transformer or not. */
function testing(isOn: boolean): Site {
  const site = backFed()(before('test', { on: 'conductor-b' }))
  return isOn ? { ...site, livening: { id: 'set-on', at: site.time, cleared: false, provedOff: false } } : site
}

export const lowVoltageCases: readonly Case[] = [
  [
    'take-carriers-out',
    () => backFedNow('S-12'),
    'so',
    { on: 't1', values: { leave: 'bagged' } },
    (s) => [s.carriers['t1'], s.livening?.provedOff, last(s)],
    ['out', true, 'did.take-carriers-out'],
  ],
  [
    'take-carriers-out',
    () => backFedNow('S-12'),
    'so',
    { on: 't1', values: { leave: 'hung' } },
    (s) => [s.carriers['t1'], s.livening?.provedOff],
    ['hung', false],
  ],
  [
    'put-carriers-in',
    () => ({ ...backFedNow('S-12'), carriers: { t1: 'hung' } }),
    'so',
    { on: 't1' },
    (s) => s.carriers['t1'],
    'in',
  ],
  [
    'open-main',
    () => backFedNow('K-71'),
    'so',
    { on: 't1' },
    (s) => [s.mains['t1']?.position, s.livening?.provedOff, last(s)],
    ['open', true, 'did.open-main'],
  ],
  ['close-main', () => withMainOpen('K-71'), 'so', { on: 't1' }, (s) => s.mains['t1']?.position, 'closed'],
  [
    'lock',
    () => withMainOpen('K-71'),
    'so',
    { on: 't1', with: 'K-71' },
    (s) => [s.mains['t1']?.lock, s.mains['t1']?.lockedBy, s.items['K-71']?.where.kind],
    ['K-71', 'so', 'fitted'],
  ],
  [
    'unlock',
    () => done(withMainOpen('K-71'), 'so', 'lock', { on: 't1', with: 'K-71' }),
    'so',
    { on: 't1' },
    (s) => [s.mains['t1']?.lock, s.persons['so']?.holds],
    [null, ['K-71']],
  ],
  ['look', () => backFedNow('K-71'), 'so', { on: 't1' }, last, 'see.transformer'],
  [
    'walk',
    () => backFed()(atHandle()),
    'so',
    { on: 't1' },
    (s) => s.persons['so']?.place,
    { kind: 'ground', at: { x: -120, y: 1.5 } },
  ],
  ['test', () => testing(true), 'pw', { with: 'D-04', on: 'conductor-b' }, last, 'test.indicates'],
  ['test', () => testing(false), 'pw', { with: 'D-04', on: 'conductor-b' }, last, 'test.silent'],
]
