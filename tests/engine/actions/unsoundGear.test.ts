/** What unsound gear does in use: each by a plain fact of the thing (common practice, no source). */
import { expect, test } from 'vitest'
import { before, done } from '../../support/cleanStages'
import { defect } from '../hazard/sites'
import type { Site } from '../../../src/engine/site/site'
import { isLockedBy } from '../../../src/engine/site/questions'

const earthing = (): Site => before('clamp')
const stick = (site: Site): string =>
  Object.values(site.items).find(
    (it) => it.type === 'operating-stick' && (it.where.kind === 'aloft' || it.where.kind === 'person'),
  )!.id

test.each(['cracked-lug', 'loose-joint'])(
  'a stick with %s gives three turns, whatever is ordered: the tug tells',
  (fault) => {
    const clamped = (site: Site) => done(site, 'pw', 'clamp', { with: 'E-07', on: 'conductor-a', values: { turns: 6 } })
    const sound = earthing()
    const slipping = defect(stick(sound), fault)(sound)
    expect(clamped(sound).clamps.at(-1)?.turns).toBe(6)
    expect(clamped(slipping).clamps.at(-1)?.turns).toBe(3)
    const tug = done(clamped(slipping), 'pw', 'tug', { on: 'conductor-a' })
    expect(tug.evidence.at(-1)?.says).toBe('feel.clamp-turns')
  },
)

test('a lock that opens when pulled, or that somebody else has a key to, keeps nobody out', () => {
  const site = earthing()
  expect(isLockedBy(site, 'K-71')).toBe(true)
  expect(isLockedBy(site, null)).toBe(false)
  for (const fault of ['broken', 'wrong-owner'])
    expect(isLockedBy(defect('K-71', fault)(site), 'K-71'), fault).toBe(false)
})
