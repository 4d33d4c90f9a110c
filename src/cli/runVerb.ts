/** One line of the command line: the verb by its name, and its exit code. 0 fine, 1 the answer is no, 2 unusable input. */
import { UnusableInput } from './input'

type Verb = (parameters: readonly string[]) => number | Promise<number>

/** Each verb loads only what it needs. */
const verbs = new Map<string, () => Promise<Verb>>([
  ['check', async () => (await import('./check')).check],
  ['expose', async () => (await import('./expose')).expose],
  ['grade', async () => (await import('./grade')).grade],
  ['ground', async () => (await import('./ground')).ground],
  ['netlist', async () => (await import('./netlist')).netlist],
  ['qualify', async () => (await import('./qualify')).qualify],
  ['schema', async () => (await import('./schema')).schema],
])

export async function runVerb([name = '', ...parameters]: readonly string[]): Promise<number> {
  const load = verbs.get(name)
  if (load === undefined) {
    const asked = name === '' ? 'A verb is needed' : `No verb is called ${name}`
    console.error(`${asked}. The verbs are: ${[...verbs.keys()].join(', ')}`)
    return 2
  }
  try {
    const verb = await load()
    return await verb(parameters)
  } catch (error) {
    if (!(error instanceof UnusableInput)) throw error
    for (const line of error.lines) console.error(line)
    return 2
  }
}
