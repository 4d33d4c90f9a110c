/** Protection on the job sheet: said as it is, and no relay that is not there. */
import { describe, expect, it } from 'vitest'
import { curveNames } from '../../../../src/engine'
import { protectionNotes, relaySetting } from '../../../../src/app/panels/jobSheet/protectionWords'
import { english, makeSpeaker } from '../../../../src/text'
import { marrowBend } from '../../../support/marrowBend'

const speaker = makeSpeaker({ ...english, 'thing.fx': 'Crossing feeder' })
const feeder = marrowBend(1).feeders.find((it) => it.id === 'fx')!

describe('protection on the job sheet', () => {
  it('names the curve once, and says that there is no sensitive relay', () => {
    expect(protectionNotes([feeder, feeder], speaker)).toEqual([
      'Pick-up and time multiplier, IEC standard inverse.',
      'Sensitive earth fault is out of service.',
    ])
    expect(relaySetting(feeder.earthFault)).toBe('40 A × 0.2')
  })

  it('says a sensitive relay and fuses where they are', () => {
    const sensitiveEarthFault = { curve: 'definite-time', pickup: 4, multiplier: 5 } as const
    const notes = protectionNotes([{ ...feeder, sensitiveEarthFault, fuses: { link: 'K', rating: 65 } }], speaker)
    expect(notes.slice(1)).toEqual([
      'Crossing feeder: sensitive earth fault 4 A, 5 s.',
      'Crossing feeder: fuses 65 A, type K.',
    ])
  })

  it('has words for each curve', () => {
    for (const curve of curveNames) expect(Object.keys(english)).toContain(`curve.${curve}`)
  })
})
