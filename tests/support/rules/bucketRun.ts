/** The job of the place with a bucket truck, done from the bucket as the demonstration does it, with nothing coming alive. */
import { demonstrate, drawScenario, type Order, type Scenario } from '../../../src/engine'
import { scenarioBase } from '../record/shelf'
import { shippedPack } from './recorded'

export function bucketRun(): { readonly scenario: Scenario; readonly orders: readonly Order[] } {
  const scenario = { ...drawScenario(scenarioBase('rustmesa-junction'), 2, 'practise'), visible: null }
  return { scenario, orders: demonstrate(scenario, shippedPack('multi-ground')).orders }
}
