/** Thunder: the job stops, the pole worker comes down, the earths stay on; it goes on once the sky was read to be quiet. */
import { isPoleWorkerUp, walkOut } from './ask'
import { BrokenOff } from './brokenOff'
import type { Job } from './job'
import { comeDown } from './removal'
import { isThundering } from './thunder'

/** The sky is read again after so many seconds; after so many readings the day is given up (common practice, no source). */
const every = 600
const mostReadings = 24

/** Stopped for thunder, with everybody out of the barrier until it is over. */
export function shelter(job: Job): void {
  const { pic, gw } = job.crew
  const isOutAlready = job.belief().paper.stopped
  if (!isOutAlready) job.order(pic, 'stop-job')
  job.wait()
  if (isPoleWorkerUp(job)) comeDown(job)
  if (!isOutAlready) for (const who of [pic, gw]) walkOut(job, who)
  job.wait()
  awaitQuiet(job)
  job.order(pic, 'start-again')
  job.wait()
}

/** Nobody goes up in thunder. @throws BrokenOff when it does not end */
export function awaitQuiet(job: Job): void {
  for (let reading = 0; isThundering(job.belief()); reading++) {
    if (reading === mostReadings) throw new BrokenOff('thunder-stays')
    job.rest(every)
    job.order(job.crew.pic, 'read-weather')
    job.wait()
  }
}
