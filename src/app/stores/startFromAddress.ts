/** What is open when the page has loaded: the job that was left, unless the address asks for another one to practise. */
import type { Address } from '../storage/address'
import { scenarioIds } from '../storage/library'
import { assessStore } from './assessStore'
import { headFor } from './headFor'
import { openJob, resumeSaved } from './openJob'
import { findSavedJob } from './saveJob'
import { resumeShown } from './showJob'
import { goTo, places } from './viewStore'

export function startFromAddress(address: Address): void {
  const saved = findSavedJob()
  const isSealed = saved?.head.purpose === 'assess' && assessStore.getState().phase === 'running'
  const isAskedFor =
    isSealed ||
    !address.scenario ||
    (saved?.head.scenario === address.scenario &&
      saved.head.purpose === (address.purpose ?? 'practise') &&
      (address.seed === undefined || saved.head.seed === address.seed))
  const place = places.find((it) => it === address.place)
  const resumed = !saved || isAskedFor ? resumeSaved() : 'nothing'
  if (resumed === 'aside') return
  if (resumed === 'resumed') {
    goTo(place ?? 'site')
    resumeShown()
  } else if (address.scenario && scenarioIds.includes(address.scenario) && address.purpose !== 'assess') {
    openJob(headFor(address.scenario, address.seed ?? 1, 'practise'))
    if (place) goTo(place)
  }
}
