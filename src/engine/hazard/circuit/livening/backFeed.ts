/**
 * Somebody's own source comes on behind a transformer of the section and steps up to its full high voltage: a portable set
 * (procedure D8), an inverter on its own (D9), a vehicle that feeds a house (D10), the next transformer's network over a
 * tie (D11). One mechanism; the source is data. Carriers that hung open in their cut-outs have been pushed home before it.
 */
import { embeddedSource, requireEmbedded } from '../embeddedSource'
import { carriers, requireTransformer } from '../transformer'
import type { Mechanism } from './mechanism'

export const backFeed: Mechanism<'back-feed'> = {
  kind: 'back-feed',
  rows: [8, 9, 10, 11],
  links: (scenario, { source }) => {
    const { transformer } = requireEmbedded(scenario, source)
    return carriers(scenario, requireTransformer(scenario, transformer))
  },
  // what ends it is a device by its kind: protection/devicesOf.ts
  ownSource: (scenario, { source }) => ({
    id: source,
    elements: embeddedSource(scenario, requireEmbedded(scenario, source)),
    stopsAfter: 'never',
  }),
}
