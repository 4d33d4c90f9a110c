/** Everything that is wrong with the draft, at once; each leads to its field. */
import { say } from '../../../text/office'
import type { Draft, DraftIssue } from '../../stores/office/draft'
import { PlaceLine } from './PlaceLine'

export function IssueList({ draft, issues }: { draft: Draft; issues: readonly DraftIssue[] }) {
  return (
    <div className='officeissues'>
      <h2 className='sec'>
        {say('office.issues')}
        <span className='q' role='status'>
          {issues.length === 0
            ? say('office.noIssues')
            : issues.length === 1
              ? say('office.oneIssue')
              : say('office.issueCount', { count: issues.length })}
        </span>
      </h2>
      <ul>
        {issues.map((it) => (
          <PlaceLine
            key={`${it.place.join(' ')} ${it.allowed}`}
            draft={draft}
            place={it.place}
            name={it.path}
            words={say('office.found', { found: it.found, allowed: it.allowed })}
          />
        ))}
      </ul>
    </div>
  )
}
