import { expect, test } from 'vitest'
import { watchConsole } from './watchConsole'

test('every way of writing to the console is recorded, and the console is given back', () => {
  const before = console.warn
  const watch = watchConsole()
  console.log('one', 1)
  console.warn('two')
  console.error(new Error('three'))
  watch.stop()
  expect(watch.lines).toEqual(['console.log: one 1', 'console.warn: two', 'console.error: Error: three'])
  expect(console.warn).toBe(before)
})
