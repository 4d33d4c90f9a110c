/** Optional protection of a feeder and of a switch: read with its units, refused with path and range. */
import { describe, expect, it } from 'vitest'
import { readScenario } from '../../../src/files/scenario/read'
import { marrowBendText } from '../../support/marrowBend'

interface File {
  feeders: Record<string, unknown>[]
  switches: Record<string, unknown>[]
  livenings: Record<string, unknown>[]
}

const readWith = (change: (file: File) => void) => {
  const file = JSON.parse(marrowBendText()) as File
  change(file)
  return readScenario(JSON.stringify(file))
}
const issuesWith = (change: (file: File) => void) => {
  const read = readWith(change)
  return read.ok ? [] : read.issues.map(({ path, allowed }) => [path, allowed])
}

describe('protection that a file may say', () => {
  it('reads sensitive earth fault, fuses and reset of a feeder, and carriers of a switch', () => {
    const read = readWith(({ feeders, switches, livenings }) => {
      feeders[0]!.sensitiveEarthFault = { curve: 'definite-time', pickupA: 4, multiplier: 5 }
      feeders[0]!.fuses = { link: 'K', ratingA: 65 }
      feeders[0]!.relayReset = 'kept'
      switches[0]!.fuses = { link: 'T', ratingA: 25 }
      livenings.push({ id: 'carrier-in', kind: 'fuse-carrier', switch: switches[0]!.id, phase: 'B' })
    })
    expect(read.ok ? [] : read.issues).toEqual([])
    if (!read.ok) return
    expect(read.value.feeders[0]).toMatchObject({
      sensitiveEarthFault: { curve: 'definite-time', pickup: 4, multiplier: 5 },
      fuses: { link: 'K', rating: 65 },
      relayReset: 'kept',
    })
    expect(read.value.switches[0]!.fuses).toEqual({ link: 'T', rating: 25 })
  })

  it('refuses a rating outside the standard, another link, a pickup of 0, a reset that is none: all at once', () => {
    const issues = issuesWith(({ feeders }) => {
      feeders[0]!.fuses = { link: 'Z', ratingA: 26 }
      feeders[0]!.sensitiveEarthFault = { curve: 'definite-time', pickupA: 0, multiplier: 5 }
      feeders[0]!.relayReset = 'sometimes'
    })
    expect(issues.map(([path]) => path).sort()).toEqual([
      '$.feeders[0].fuses.link',
      '$.feeders[0].fuses.ratingA',
      '$.feeders[0].relayReset',
      '$.feeders[0].sensitiveEarthFault.pickupA',
    ])
    expect(issues.find(([path]) => path?.endsWith('ratingA'))?.[1]).toContain('6, 8, 10, 12')
  })

  it('refuses a fall-back by the curve where no relay has one', () => {
    const issues = issuesWith(({ feeders }) => {
      feeders[0]!.relayReset = 'by-curve'
    })
    expect(issues).toEqual([['$.feeders[0].relayReset', expect.stringContaining('at-once or kept')]])
    const relay = { curve: 'ieee-very-inverse', pickupA: 40, multiplier: 1 }
    expect(
      issuesWith(({ feeders }) => Object.assign(feeders[0]!, { relayReset: 'by-curve', earthFault: relay })),
    ).toEqual([])
  })

  it('refuses a carrier put back where there are none, and into a switch that is not there', () => {
    const issues = issuesWith(({ switches, livenings }) => {
      livenings.push({ id: 'carrier-in', kind: 'fuse-carrier', switch: switches[0]!.id, phase: 'B' })
      livenings.push({ id: 'carrier-gone', kind: 'fuse-carrier', switch: 'switch-99', phase: 'B' })
    })
    expect(issues.map(([, allowed]) => allowed)).toEqual([
      expect.stringContaining('the id of a switch'),
      'the id of a switch with fuses',
    ])
  })
})
