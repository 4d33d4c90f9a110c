/** Options and places of a verb; anything else is told with how the verb is used. */
import { parseArgs, type ParseArgsConfig } from 'node:util'
import { UnusableInput } from './input'

type Options = NonNullable<ParseArgsConfig['options']>

export interface Usage<O extends Options> {
  readonly options: ReturnType<typeof parseArgs<{ options: O; allowPositionals: true; strict: true }>>['values']
  readonly places: readonly string[]
}

/** @throws UnusableInput with the usage line */
export function readUsage<const O extends Options>(
  usage: string,
  parameters: readonly string[],
  options: O,
  least: number,
): Usage<O> {
  try {
    const { values, positionals } = parseArgs({ args: [...parameters], options, allowPositionals: true, strict: true })
    if (positionals.length < least) throw new Error(`${least} needed, ${positionals.length} given`)
    return { options: values, places: positionals }
  } catch (error) {
    throw new UnusableInput([error instanceof Error ? error.message : String(error), `usage: ${usage}`])
  }
}
