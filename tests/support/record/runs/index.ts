/** Recorded runs by scenario. A new scenario: its file beside this one, and one line here. */
import type { RecordedRun } from '../recordedRun'
import { bellweatherFarmRuns } from './bellweatherFarm'
import { coldmereColRuns } from './coldmereCol'
import { gannetrySpitRuns } from './gannetrySpit'
import { highfellCrossingRuns } from './highfellCrossing'
import { ironstoneParkRuns } from './ironstonePark'
import { kestrelFlatRuns } from './kestrelFlat'
import { larkmossCloseRuns } from './larkmossClose'
import { marrowBendRuns } from './marrowBend'
import { rustmesaJunctionRuns } from './rustmesaJunction'
import { saltbridgeRoadRuns } from './saltbridgeRoad'
import { sedgelandDroveRuns } from './sedgelandDrove'
import { tamberlyStreetRuns } from './tamberlyStreet'

export const runsOf: Readonly<Record<string, readonly RecordedRun[]>> = {
  'bellweather-farm': bellweatherFarmRuns,
  'coldmere-col': coldmereColRuns,
  'gannetry-spit': gannetrySpitRuns,
  'highfell-crossing': highfellCrossingRuns,
  'ironstone-park': ironstoneParkRuns,
  'kestrel-flat': kestrelFlatRuns,
  'larkmoss-close': larkmossCloseRuns,
  'marrow-bend': marrowBendRuns,
  'rustmesa-junction': rustmesaJunctionRuns,
  'saltbridge-road': saltbridgeRoadRuns,
  'sedgeland-drove': sedgelandDroveRuns,
  'tamberly-street': tamberlyStreetRuns,
}
