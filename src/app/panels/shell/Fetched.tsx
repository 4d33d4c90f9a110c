/** A component whose script is fetched when it is first shown. A fetch that fails is told. */
import { type ComponentType, type ReactNode, useEffect, useState } from 'react'
import { say } from '../../../text/front'

interface FetchedProps<Props> {
  readonly load: () => Promise<{ readonly default: ComponentType<Props> }>
  readonly props: Props
  /** Stands there until it is here: the way to something else. */
  readonly meanwhile: ReactNode
}

/** What is here stays here: shown again, it is there at once. */
const here = new WeakMap<object, unknown>()

export function Fetched<Props extends object>({ load, props, meanwhile }: FetchedProps<Props>) {
  const [Component, setComponent] = useState(() => (here.get(load) as ComponentType<Props> | undefined) ?? null)
  const [failure, setFailure] = useState<string | null>(null)
  useEffect(() => {
    if (here.has(load)) return
    load().then(
      ({ default: component }) => {
        here.set(load, component)
        setComponent(() => component)
      },
      (error: unknown) => setFailure(error instanceof Error ? error.message : String(error)),
    )
  }, [load])
  if (Component) return <Component {...props} />
  return (
    <div className='note' role={failure === null ? 'status' : 'alert'}>
      {failure === null ? <p>{say('fetch.part')}</p> : <FetchFailed reason={failure} />}
      {meanwhile}
    </div>
  )
}

/** A browser remembers that a script could not be fetched: only the page loaded anew asks for it again. */
export function FetchFailed({ reason }: { reason: string }) {
  return (
    <>
      <p>{say('fetch.failed', { reason })}</p>
      <button type='button' className='btn' onClick={() => location.reload()}>
        {say('fetch.again')}
      </button>
    </>
  )
}
