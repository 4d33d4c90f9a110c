/** Tries a third of the published figures with this browser's own arithmetic, one case after the other. */
import { qualifyCase } from '../../reports/qualification'
import { loadFigureCases } from '../storage/figureCases'
import type { FiguresAnswer, FiguresQuestion } from './figures'

const answer = (it: FiguresAnswer): void => self.postMessage(it)

async function tryAll({ scenarios }: FiguresQuestion): Promise<void> {
  const { third, all } = await loadFigureCases()
  answer({ tell: 'count', total: third.length, all })
  for (const item of third) answer({ tell: 'case', result: qualifyCase(item, (place) => scenarios[place]) })
  answer({ tell: 'done' })
}

self.onmessage = ({ data }: MessageEvent<FiguresQuestion>) => {
  tryAll(data).catch((error: unknown) => {
    answer({ tell: 'failed', reason: error instanceof Error ? error.message : String(error) })
  })
}
