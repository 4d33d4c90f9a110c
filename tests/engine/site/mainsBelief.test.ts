/** What the crew knows of carriers and main switches: what somebody did or looked at, and their own locks. */
import { expect, it } from 'vitest'
import { believe, type Site } from '../../../src/engine'
import { done, before } from '../../support/cleanStages'
import { backFed, besideTransformer } from '../hazard/backFeedSites'

const start = (item: string): Site => besideTransformer(backFed()(before('open-switch')), item)
const known = (site: Site) => believe(site).mains.map(({ id, last, lock }) => [id, last?.says ?? null, lock])

it('nothing at first, however they stand', () => {
  const site = start('S-12')
  expect(known(site)).toEqual([
    ['set-1', null, null],
    ['t1', null, null],
  ])
  const other: Site = { ...site, carriers: { t1: 'hung' } }
  expect(JSON.stringify(believe(other))).toBe(JSON.stringify(believe(site)))
})

it('then the last act or look', () => {
  const looked = done(start('K-71'), 'so', 'look', { on: 't1' })
  expect(known(looked)[1]).toEqual(['t1', 'see.transformer', null])
  const open = done(looked, 'so', 'open-main', { on: 't1' })
  expect(known(open)[1]).toEqual(['t1', 'did.open-main', null])
  const locked = done(open, 'so', 'lock', { on: 't1', with: 'K-71' })
  expect(known(locked)[1]).toEqual(['t1', 'did.open-main', 'K-71'])
})
