/** Runs that leave and enter this browser as files. What cannot be read is refused with everything that is wrong in it. */
import { useRef, useState } from 'react'
import { useStore } from 'zustand'
import { say } from '../../../text/front'
import { download } from '../../storage/download'
import { assessStore } from '../../stores/assessStore'
import { jobStore } from '../../stores/jobStore'
import { withFolder } from '../folder/loadFolder'

export function RunsBox() {
  const [issues, setIssues] = useState<readonly { path: string; found: string; allowed: string }[]>([])
  const file = useRef<HTMLInputElement>(null)
  const head = useStore(jobStore, (job) => job.head)
  const isOver = useStore(jobStore, (job) => job.isOver)
  const isSealed = useStore(assessStore, (assessment) => assessment.phase === 'running')
  const canExport = head !== null && !isSealed && (head.purpose === 'practise' || isOver)
  return (
    <div className='runs'>
      <h2 className='sec'>{say('runs.title')}</h2>
      <div className='foot'>
        <button type='button' className='btn' disabled={isSealed} onClick={() => file.current?.click()}>
          {say('runs.import')}
        </button>
        <button
          type='button'
          className='btn'
          disabled={!canExport}
          onClick={() =>
            withFolder((folder) => download(`${head?.scenario}-${head?.seed}.run.json`, folder.exportRun()))
          }
        >
          {say('runs.export')}
        </button>
        <button
          type='button'
          className='btn'
          disabled={head === null || isSealed}
          onClick={() => withFolder((folder) => folder.leaveJob())}
        >
          {say('runs.leave')}
        </button>
        <input
          ref={file}
          type='file'
          accept='application/json,.json'
          className='vh'
          tabIndex={-1}
          aria-label={say('runs.file')}
          onChange={(event) => {
            const chosen = event.target.files?.[0]
            if (chosen) withFolder(async (folder) => setIssues(await folder.importRun(chosen)))
            event.target.value = ''
          }}
        />
      </div>
      {issues.length > 0 && (
        <div role='alert'>
          <p className='gap'>{say('runs.refused', { count: issues.length })}</p>
          <table>
            <tbody>
              {issues.slice(0, 40).map((issue) => (
                <tr key={issue.path + issue.found}>
                  <td className='n'>{issue.path}</td>
                  <td>{issue.found}</td>
                  <td className='q'>{issue.allowed}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </div>
  )
}
