/**
 * `npm run walks -- [count]`: so many random walks (10 000), a share on each scenario, half of them from the middle of the job
 * as the demonstration does it. Exit code 1 when one crashes or breaks what must be so of any run.
 */
import { demonstrate, drawScenario, startSite, type Site } from '../../src/engine'
import { faultsOfWalk, walkAtRandom } from '../support/randomWalk'
import { packOf, scenarioBase, scenarioSlugs } from '../support/record/shelf'
import { usualPack } from '../support/record/usualPack'

const count = Number(process.argv[2] ?? 10_000)
const slugs = scenarioSlugs()
const share = Math.ceil(count / slugs.length)
let [walked, acted, faulty] = [0, 0, 0]

for (const slug of slugs) {
  const openings = openingsOf(slug)
  for (let seed = 0; seed < share; seed++) {
    const opening = openings[seed % openings.length]!
    const timeline = walkAtRandom(seed, opening, 40)
    const faults = faultsOfWalk(timeline, opening)
    walked++
    acted += timeline.entries.filter(({ outcome }) => outcome === 'done').length
    if (faults.length > 0) faulty++
    for (const fault of faults) console.log(`${slug}, walk ${seed}: ${fault}`)
  }
  console.log(`${slug}: ${share} walks`)
}
console.log(`${walked} walks, ${acted} acts carried out, ${faulty} faulty`)
process.exitCode = faulty > 0 ? 1 : 0

/** The first second of three seeds, and as often a place in the job where somebody is up the pole or at a switch. */
function openingsOf(slug: string): readonly Site[] {
  const base = scenarioBase(slug)
  const starts = [1, 2, 3].map((seed) => startSite(drawScenario(base, seed, 'practise')))
  const { timeline } = demonstrate(drawScenario(base, 2, 'practise'), packOf(usualPack(slug)))
  const middles = ['take-permit', 'clamp', 'untie'].flatMap(
    (act) => timeline.entries.find(({ order }) => order.do === act)?.before ?? [],
  )
  return [...starts, ...middles]
}
