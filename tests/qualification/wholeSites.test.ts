// Cases that go through everything: a scenario, a recorded run, a livening, each worked by hand.
import { describe, it } from 'vitest'
import { expectMet, files, isOfSites, namedCases } from './caseFiles'

describe.each(files.filter(isOfSites))('%s', (file) => {
  it.each(namedCases(file))('%s', (_id, item) => expectMet(item))
})
