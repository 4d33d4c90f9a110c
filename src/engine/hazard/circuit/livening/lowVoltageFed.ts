/**
 * Somebody's own source comes on behind the transformer that feeds the low voltage under the line (procedure D9): the wires
 * live by it whether the transformer's own switch and carriers are open or not. Bonds across the wires pull a source that
 * limits its current down to nothing there.
 */
import { embeddedSource, requireEmbedded } from '../embeddedSource'
import type { Mechanism } from './mechanism'

export const lowVoltageFed: Mechanism<'low-voltage-fed'> = {
  kind: 'low-voltage-fed',
  rows: [9],
  links: () => [],
  ownSource: (scenario, { source }) => ({
    id: source,
    elements: embeddedSource(scenario, requireEmbedded(scenario, source)),
    stopsAfter: 'never',
  }),
}
