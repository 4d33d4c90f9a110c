/** A site prepared by the recorded clean run, for those who practise one part of the job. */
import { type Part, type Scenario, type Site, actions, openingAt } from '../../engine'
import { readRun } from '../../files/run/read'
import { cleanRunText } from './library'

export function prepareSite(scenario: Scenario, part: Part): Site {
  const read = readRun(cleanRunText(scenario.id) ?? '', actions)
  if (!read.ok) throw new Error(`the recorded run of ${scenario.id} cannot be read`)
  const site = openingAt(scenario, read.value.orders, part)
  if (!site) throw new Error(`the recorded run of ${scenario.id} never gets to ${part}`)
  return site
}
