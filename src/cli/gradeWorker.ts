/** A process that judges one run after another, as they are handed to it. */
import { judge, type Job } from './judge'

process.on('message', ({ index, job }: { readonly index: number; readonly job: Job }) => {
  process.send?.({ index, judged: judge(job) })
})
