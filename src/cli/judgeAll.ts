/** Many runs, as many at once as the machine has cores; the answers in the order of the runs. */
import { fork } from 'node:child_process'
import { availableParallelism } from 'node:os'
import { fileURLToPath } from 'node:url'
import { judge, type Job, type Judged } from './judge'

type Answer = Judged | undefined

interface Task {
  readonly index: number
  readonly job: Job
}

const worker = fileURLToPath(new URL('./gradeWorker.ts', import.meta.url))

export async function judgeAll(jobs: readonly Job[]): Promise<readonly Answer[]> {
  const processes = Math.min(availableParallelism(), jobs.length)
  if (processes < 2) return jobs.map(judge)
  const answers = new Map<number, Answer>()
  const queue = jobs.map((job, index): Task => ({ index, job }))
  await Promise.all(Array.from({ length: processes }, () => workThrough(queue, answers)))
  return jobs.map((_, index) => answers.get(index))
}

/** One process, until nothing is left to do. It inherits what lets this one read TypeScript; a thread does not. */
function workThrough(queue: Task[], answers: Map<number, Answer>): Promise<void> {
  return new Promise((resolve, reject) => {
    const child = fork(worker, { serialization: 'advanced' })
    let task: Task | undefined
    const next = (): void => {
      task = queue.shift()
      if (task) child.send(task)
      else child.disconnect()
    }
    child.on('error', reject)
    child.on('exit', (code) => {
      if (task === undefined && code === 0) resolve()
      else reject(new Error(`judging ${task?.job.run.place ?? 'a run'} ended with ${code ?? 'a signal'}`))
    })
    child.on('message', ({ index, judged }: { readonly index: number; readonly judged: Answer }) => {
      answers.set(index, judged)
      next()
    })
    next()
  })
}
