// One line of the command line in this process: what it writes, and its exit code.

import { vi } from 'vitest'
import { runVerb } from '../../src/cli/runVerb'

export interface Ended {
  readonly code: number | null
  readonly out: string
  readonly err: string
}

/** One at a time: the console and standard output belong to the verb until it ends. */
export async function answerOfVerb(...parameters: readonly string[]): Promise<Ended> {
  let out = ''
  let err = ''
  const spies = [
    vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
      out += String(text)
      return true
    }),
    vi.spyOn(console, 'log').mockImplementation((text) => void (out += `${text}\n`)),
    vi.spyOn(console, 'error').mockImplementation((text) => void (err += `${text}\n`)),
  ]
  try {
    return { code: await runVerb(parameters), out, err }
  } finally {
    for (const spy of spies) spy.mockRestore()
  }
}
