/**
 * What the crew does when one of them is struck: nobody goes up before the source is off, the one who hangs is brought down and
 * helped, and the job ends there. The order is the procedure's A77 (common practice, no source beyond it).
 */
import { expect, test } from 'vitest'
import { createSweepCache, demonstrate, drawScenario, judgeRun, type Conduct } from '../../../src/engine'
import { marrowBendRuns } from '../../support/record/runs/marrowBend'
import { packOf, scenarioBase } from '../../support/record/shelf'

const bare = marrowBendRuns.find(({ name }) => name === 'no-cover-holed-boots')!
const pack = packOf('concrete-rod')

/** A bare thigh on bare concrete when the line comes alive. */
function struck(conduct: Conduct) {
  const base = scenarioBase('marrow-bend')
  const kit = { id: 'FA-1', type: 'first-aid-kit', label: { serial: 'FA-1' }, defects: [] }
  const items = [...base.items, kit]
  return demonstrate(drawScenario({ ...base, items, casualties: true }, bare.seed, 'practise'), pack, conduct)
}

function actsAfter({ timeline }: ReturnType<typeof struck>): readonly string[] {
  const done = timeline.entries.filter((it) => it.outcome === 'done' && it.start > timeline.struck!.at)
  return done.map(({ order }) => `${order.who} ${order.do}`)
}

test('off first, then down, then first aid; the job is left to others', () => {
  const shown = struck(bare.conduct!())
  expect(shown.declined).toEqual({ why: 'casualty', about: 'pw' })
  const acts = actsAfter(shown)
  const inOrder = ['pic ask-source-off', 'gw climb', 'gw bring-down', 'gw first-aid', 'pic stop-job']
  expect(acts.filter((it) => inOrder.includes(it) && it !== 'gw climb')).toEqual(
    inOrder.filter((it) => it !== 'gw climb'),
  )
  expect(acts.indexOf('gw climb')).toBeGreaterThan(acts.indexOf('pic ask-source-off'))
  expect(acts.some((it) => it.startsWith('pw '))).toBe(false)
})

test('whoever goes up before it is off has the one who hangs in both hands while it may come again: path 20', () => {
  const conduct = bare.conduct!()
  const tooSoon = struck({
    ...conduct,
    deviate: (intent, job) => (intent.do === 'ask-source-off' ? [] : conduct.deviate?.(intent, job)),
  })
  const result = judgeRun(tooSoon.timeline, pack, { sweep: true, cache: createSweepCache() })
  expect(result.findings.map(({ rule }) => rule)).toContain('source-off-first')
  const paths = result.sweep.filter(({ person }) => person === 'gw').map(({ path }) => path)
  expect(paths).toContain('rescuer')
})
