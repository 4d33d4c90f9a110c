/** The command line as a program: `cli <verb> …`. Wiring, nothing else. */
import { runVerb } from './runVerb'

// Whoever reads the output may have read enough.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error
  process.exit()
})

process.exitCode = await runVerb(process.argv.slice(2))
