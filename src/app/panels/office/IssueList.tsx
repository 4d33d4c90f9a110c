/** Everything that is wrong with the draft, at once; each leads to its field. */
import { say } from '../../../text/office'
import type { Draft, DraftIssue } from '../../stores/office/draft'
import { goTo } from '../../stores/office/officeStore'
import { findSection } from './sections'

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
          <li key={`${it.place.join(' ')} ${it.allowed}`}>
            <button
              type='button'
              className='pick'
              onClick={() => {
                const { section, within } = findSection(draft, it.place)
                goTo(it.place, section, within)
              }}
            >
              <span>
                <b className='n'>{it.path}</b>
                <br />
                <span className='q'>{say('office.found', { found: it.found, allowed: it.allowed })}</span>
              </span>
            </button>
          </li>
        ))}
      </ul>
    </div>
  )
}
