/** The headings of the form, each with how many issues lie under it. */
import { say } from '../../../text/office'
import type { Draft, DraftIssue } from '../../stores/office/draft'
import { showSection } from '../../stores/office/officeStore'
import { type Section, findSection } from './sections'

interface ContentsProps {
  readonly draft: Draft
  readonly sections: readonly Section[]
  readonly chosen: string
  readonly issues: readonly DraftIssue[]
}

export function Contents({ draft, sections, chosen, issues }: ContentsProps) {
  const found = issues.map((it) => findSection(draft, it.place).section)
  return (
    <nav className='scroll officecontents' aria-label={say('office.contents')}>
      {sections.map(({ id, title }) => {
        const count = found.filter((it) => it === id).length
        return (
          <button
            key={id}
            type='button'
            className={id === chosen ? 'pick sel' : 'pick'}
            aria-current={id === chosen ? 'true' : undefined}
            onClick={() => showSection(id)}
          >
            {title}
            {count > 0 && (
              <b className='r crit'>
                {count}
                <span className='vh'> {say('office.issues')}</span>
              </b>
            )}
          </button>
        )
      })}
    </nav>
  )
}
