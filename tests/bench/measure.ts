/** How long something takes: the median and the fastest of its repeats, after some that do not count. */

export interface Row {
  readonly name: string
  /** Milliseconds, or runs a second. */
  readonly unit: 'ms' | '/s'
  readonly measured: number
  /** Of the fastest repeat: on a busy machine the nearer one to what it is by itself. */
  readonly best: number
  /** What was asked for; null where there is only a comparison. */
  readonly target: number | null
  /** What stands beside the figure: how much of it, how often. */
  readonly note: string
}

export interface Repeats {
  /** Repeats that warm the machine up. */
  readonly first?: number
  readonly counted?: number
}

export type Taken = Pick<Row, 'measured' | 'best'>

/** Milliseconds of one call. @param prepare what each call needs and does not count */
export function timed<T>(prepare: () => T, run: (it: T) => unknown, { first = 3, counted = 9 }: Repeats = {}): Taken {
  for (let i = 0; i < first; i++) run(prepare())
  const times = Array.from({ length: counted }, () => {
    const it = prepare()
    const start = performance.now()
    run(it)
    return performance.now() - start
  }).sort((a, b) => a - b)
  return { measured: times[Math.floor(times.length / 2)]!, best: times[0]! }
}

/** Milliseconds of one call that is too short for the clock by itself. */
export function timedMany(run: () => unknown, calls: number, repeats?: Repeats): Taken {
  const many = (): void => {
    for (let i = 0; i < calls; i++) run()
  }
  const { measured, best } = timed(() => undefined, many, repeats)
  return { measured: measured / calls, best: best / calls }
}
