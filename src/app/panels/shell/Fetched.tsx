/** A component whose script is fetched when it is first shown. A fetch that fails is told, and can be tried again. */
import { type ComponentType, useCallback, useEffect, useState } from 'react'
import { say } from '../../../text/front'

interface FetchedProps<Props> {
  readonly load: () => Promise<{ readonly default: ComponentType<Props> }>
  readonly props: Props
}

/** What is here stays here: shown again, it is there at once. */
const here = new WeakMap<object, unknown>()

export function Fetched<Props extends object>({ load, props }: FetchedProps<Props>) {
  const [Component, setComponent] = useState(() => (here.get(load) as ComponentType<Props> | undefined) ?? null)
  const [failure, setFailure] = useState<string | null>(null)
  const fetch = useCallback(() => {
    setFailure(null)
    load().then(
      ({ default: component }) => {
        here.set(load, component)
        setComponent(() => component)
      },
      (error: unknown) => setFailure(error instanceof Error ? error.message : String(error)),
    )
  }, [load])
  useEffect(() => {
    if (!here.has(load)) fetch()
  }, [load, fetch])
  if (Component) return <Component {...props} />
  if (failure === null)
    return (
      <p className='note' role='status'>
        {say('fetch.scene')}
      </p>
    )
  return (
    <div className='note' role='alert'>
      <p>{say('fetch.failed', { reason: failure })}</p>
      <button type='button' className='btn' onClick={fetch}>
        {say('fetch.again')}
      </button>
    </div>
  )
}
