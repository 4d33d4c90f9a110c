/** Up and down, on the pole or in the bucket. */
import type { PoleStation } from '../site/place'
import { person } from './ask'
import { findBucketStation, isFromBucket, isInRestingBucket, moveBucketTo } from './bucket'
import type { Job } from './job'

/** Where the pole worker is aloft; undefined on the ground. */
function findStation(job: Job): PoleStation | undefined {
  const { place } = person(job, job.crew.pw)
  if (place.kind === 'bucket') return findBucketStation(job) ?? 'foot'
  return place.kind === 'pole' ? place.station : undefined
}

/** Ordered; nobody waits for it. */
export function goUpOrDown(job: Job, to: PoleStation): void {
  const isByBucket = isFromBucket(job) || isInRestingBucket(job)
  if (isByBucket && to !== 'foot') moveBucketTo(job, to)
  else job.order(job.crew.pw, 'climb', { values: { to } })
}

export function climbTo(job: Job, to: PoleStation): void {
  if (findStation(job) === to) return
  goUpOrDown(job, to)
  job.wait()
}

export const isAbove = (job: Job): boolean => findStation(job) === 'above-lv'
