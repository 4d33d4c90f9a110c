/** A site prepared by the recorded clean run, for those who practise one part of the job. */
import { type Opening, type Part, type Scenario, actions, openingAt } from '../../engine'
import { readRun } from '../../files/run/read'
import { cleanRunText } from './library'

export function prepareSite(scenario: Scenario, part: Part): Opening {
  const read = readRun(cleanRunText(scenario.id) ?? '', actions)
  if (!read.ok) throw new Error(`the recorded run of ${scenario.id} cannot be read`)
  const opening = openingAt(scenario, read.value.orders, part)
  if (!opening) throw new Error(`the recorded run of ${scenario.id} never gets to ${part}`)
  return opening
}
