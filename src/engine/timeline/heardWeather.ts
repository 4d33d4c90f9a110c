/** Thunder and rain that begin are noticed by whoever is in charge: nobody has to be told to hear them. */
import { findInCharge } from '../site/presence'
import type { Evidence, Site } from '../site/site'
import { weatherAt } from '../site/weather'

/** @param site at the second in which something may have begun */
export function heardWeather(site: Site): Site {
  const isTurn = site.scenario.weatherChanges?.some(({ at }) => at === site.time) ?? false
  const who = findInCharge(site)
  if (!isTurn || who === undefined) return site
  const [was, is] = [weatherAt({ ...site, time: site.time - 1 }), weatherAt(site)]
  const note = (by: Evidence['by'], says: string): Evidence => ({
    at: site.time,
    who,
    of: 'weather',
    by,
    says,
    values: {},
  })
  const noticed = [
    ...(is.thunder && !was.thunder ? [note('hear', 'weather.thunder-heard')] : []),
    ...(is.rain && !was.rain ? [note('feel', 'weather.rain-begins')] : []),
  ]
  return noticed.length === 0 ? site : { ...site, evidence: [...site.evidence, ...noticed] }
}
