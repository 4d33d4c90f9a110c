// Records what is written to the console until told to stop.

const methods = ['log', 'info', 'warn', 'error', 'debug', 'trace'] as const

/** Nothing reaches the real console until `stop`; `lines` grows meanwhile. */
export function watchConsole(): { readonly lines: readonly string[]; stop: () => void } {
  const lines: string[] = []
  const originals = methods.map((method) => [method, console[method]] as const)
  for (const method of methods) {
    console[method] = (...values: unknown[]) => void lines.push(`console.${method}: ${values.map(String).join(' ')}`)
  }
  return {
    lines,
    stop: () => {
      for (const [method, original] of originals) console[method] = original
    },
  }
}
