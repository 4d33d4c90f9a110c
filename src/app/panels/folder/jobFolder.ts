/** Everything that only an open job needs, behind one import that is made when a job is asked for. */
import { exportRun } from '../../stores/exportRun'
import { headFor } from '../../stores/headFor'
import { importRun } from '../../stores/importRun'
import { leaveJob, openJob } from '../../stores/openJob'
import { openShown } from '../../stores/showJob'
import { startFromAddress } from '../../stores/startFromAddress'
import { AssessSetUp } from '../assess/AssessSetUp'
import { TryingBanner } from '../assess/TryingBanner'
import { ShownBanner } from '../shown/ShownBanner'
import { Hint } from './Hint'
import { JobPlace } from './JobPlace'

export const jobFolder = {
  exportRun,
  headFor,
  importRun,
  leaveJob,
  openJob,
  openShown,
  startFromAddress,
  AssessSetUp,
  Hint,
  JobPlace,
  ShownBanner,
  TryingBanner,
} as const
