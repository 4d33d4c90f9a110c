/** Tries a third of the published figures with this browser's own arithmetic, one case after the other. */
import { qualifyCase } from '../../reports/qualification'
import { loadFigureCases } from '../storage/figureCases'
import type { FiguresAnswer } from './figures'

const answer = (it: FiguresAnswer): void => self.postMessage(it)

async function tryAll(): Promise<void> {
  const { third, all, findScenarioText } = await loadFigureCases()
  answer({ tell: 'count', total: third.length, all })
  for (const item of third) answer({ tell: 'case', result: qualifyCase(item, findScenarioText) })
  answer({ tell: 'done' })
}

tryAll().catch((error: unknown) => {
  answer({ tell: 'failed', reason: error instanceof Error ? error.message : String(error) })
})
