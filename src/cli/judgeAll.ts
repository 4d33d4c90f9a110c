/** Many runs, as many at once as the machine has cores; the answers in the order of the runs. */
import { availableParallelism } from 'node:os'
import { Worker } from 'node:worker_threads'
import { judge, type Job, type Judged } from './judge'

type Answer = Judged | undefined

export async function judgeAll(jobs: readonly Job[]): Promise<readonly Answer[]> {
  const threads = Math.min(availableParallelism(), jobs.length)
  if (threads < 2) return jobs.map(judge)
  const answers = new Map<number, Answer>()
  const queue = jobs.map((job, index) => ({ index, job }))
  await Promise.all(Array.from({ length: threads }, () => workThrough(queue, answers)))
  return jobs.map((_, index) => answers.get(index))
}

/** One thread, until nothing is left to do. */
function workThrough(queue: { readonly index: number; readonly job: Job }[], answers: Map<number, Answer>): Promise<void> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./gradeWorker.ts', import.meta.url))
    const next = (): void => {
      const task = queue.shift()
      if (task) worker.postMessage(task)
      else worker.terminate().then(() => resolve(), reject)
    }
    worker.on('error', reject)
    worker.on('message', ({ index, judged }: { readonly index: number; readonly judged: Answer }) => {
      answers.set(index, judged)
      next()
    })
    next()
  })
}
