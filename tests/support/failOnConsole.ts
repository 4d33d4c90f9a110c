// A unit test that writes to the console fails: the engine speaks through values, and a warning that scrolls past in a
// test run is a fault that nobody sees.

import { afterEach, beforeEach } from 'vitest'
import { watchConsole } from './watchConsole'

let watch: ReturnType<typeof watchConsole>

beforeEach(() => {
  watch = watchConsole()
})

afterEach(() => {
  watch.stop()
  if (watch.lines.length > 0) throw new Error(`written to the console during the test:\n${watch.lines.join('\n')}`)
})
