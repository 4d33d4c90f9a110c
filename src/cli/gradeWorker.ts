/** A thread that judges one run after another, as they are handed to it. */
import { parentPort } from 'node:worker_threads'
import { judge, type Job } from './judge'

parentPort?.on('message', ({ index, job }: { readonly index: number; readonly job: Job }) => {
  parentPort?.postMessage({ index, judged: judge(job) })
})
