/** `npm run coverage -- [actions|paragraphs|gear|defects|events|paths|rules …]`: the tables; fails when something is not exercised. */
import { coverageRows, withoutOccasion, type CoverageRow, type Kind } from './coverageRows'

const wanted = process.argv.slice(2)
const some = (names: readonly string[]): string =>
  names.length > 3 ? `${names.slice(0, 3).join(', ')} and ${names.length - 3} more` : names.join(', ') || '–'

for (const [kind, rows] of Object.entries(coverageRows()) as [Kind, readonly CoverageRow[]][]) {
  if (wanted.length > 0 && !wanted.includes(kind)) continue
  console.log(`\n${kind}`)
  for (const it of rows) console.log(`  ${it.name} | ${some(it.by)} | ${some(it.scenarios)} | ${some(it.tests)}`)
  const bare = (part: 'by' | 'scenarios' | 'tests'): readonly string[] =>
    rows.filter((it) => it[part].length === 0).map(({ name }) => name)
  const isGap = (name: string): boolean => withoutOccasion[name] === undefined
  if ([...bare('by'), ...bare('scenarios').filter(isGap), ...bare('tests')].length > 0) process.exitCode = 1
  console.log(`${kind}: ${rows.length}; nothing carries: ${list(bare('by'))}`)
  console.log(`  in no scenario: ${list(bare('scenarios'))}`)
  console.log(`  named by no test: ${list(bare('tests'))}`)
}

for (const [name, why] of Object.entries(withoutOccasion)) console.log(`\n${name}: ${why}`)

function list(names: readonly string[]): string {
  return names.length === 0 ? 'none' : `${names.length} (${names.join(', ')})`
}
