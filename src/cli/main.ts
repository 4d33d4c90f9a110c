/** The command line: `cli <verb> …`, one line per verb. Exit 0 fine, 1 the answer is no, 2 the input cannot be used. */
import { qualify } from './qualify'

type Verb = (parameters: readonly string[]) => number | Promise<number>

const verbs = new Map<string, Verb>([['qualify', qualify]])

const [name = '', ...parameters] = process.argv.slice(2)
const verb = verbs.get(name)
if (verb === undefined) {
  console.error(
    `${name === '' ? 'A verb is needed' : `No verb is called ${name}`}. The verbs are: ${[...verbs.keys()].join(', ')}`,
  )
  process.exitCode = 2
} else {
  process.exitCode = await verb(parameters)
}
