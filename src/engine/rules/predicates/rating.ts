/** Whether the copper that is planned or fitted stands the fault of the sheet until its protection has cleared it. */
import { isEarthLead } from '../../gear/earthLeads'
import { askedArea, type AskedArea, type LeadUse } from '../../site/faultDuty'
import { effectiveParameters, requireItem } from '../../site/questions'
import type { Site } from '../../site/site'
import type { SitePredicate } from '../language/predicate'
import type { Facts } from '../language/raw'
import { findItemOf } from '../language/runView'
import { isKeptApart } from './crossing'

const plannedForFault: SitePredicate = {
  id: 'planned-for-fault',
  says: 'the section that the plan names stands the worst fault of the sheet, with every reclose off',
  about: 'act',
  takes: {},
  fails({ site, entry }) {
    const area = entry?.order.values['area']
    return typeof area === 'number' ? tooThin(area, askedArea(site.scenario, 'conductors')) : undefined
  },
}

const leadForFault: SitePredicate = {
  id: 'lead-for-fault',
  says: 'the lead of the act stands the worst fault that can still come, all shots of a reclose that is not off',
  about: 'act',
  takes: {},
  fails({ site, entry, view }) {
    const id = entry === undefined ? undefined : findItemOf(view, entry)
    const item = id === undefined ? undefined : requireItem(site, id)
    const use = item && useOf(item.type)
    const area = item && effectiveParameters(item)['area']
    return use === undefined || typeof area !== 'number' ? undefined : tooThin(area, askedNow(site, use))
  },
}

function useOf(type: string): LeadUse | undefined {
  if (isEarthLead(type) || type === 'isolation-earth') return 'conductors'
  return type === 'bond-lead' ? 'metalwork' : undefined
}

/** As the control room has left it: a circuit that is out or kept apart brings nothing. */
function askedNow(site: Site, use: LeadUse): AskedArea {
  const { scenario, feedersOut, paper } = site
  return askedArea(scenario, use, ({ feeder, shots }) => {
    if (feedersOut.includes(feeder) || isKeptApart(site, feeder)) return 0
    return paper.recloseBlocked[feeder] === true ? 1 : shots
  })
}

/** mm² are asked for whole, currents told to a tenth of a kiloampere, times to a hundredth of a second. */
function tooThin(area: number, { area: asked, duty }: AskedArea): Facts | undefined {
  if (duty === undefined || area >= asked) return undefined
  return {
    area,
    least: Math.ceil(asked),
    feeder: duty.feeder,
    kiloampere: Math.round(duty.current / 100) / 10,
    seconds: Math.round(duty.time * 100) / 100,
  }
}

export const ratingPredicates = [plannedForFault, leadForFault]
