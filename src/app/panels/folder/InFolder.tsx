/** Something of the folder that stands at the Depot: a line while it is fetched, and when it could not be. */
import { type ReactNode, useEffect } from 'react'
import { useStore } from 'zustand'
import { say } from '../../../text/front'
import { type Folder, fetchFolder, folderStore } from './loadFolder'

export function InFolder({ children }: { children: (folder: Folder) => ReactNode }) {
  const folder = useStore(folderStore, (load) => load.folder)
  useEffect(fetchFolder, [])
  return folder ? children(folder) : null
}

/** Says that the sheets are on their way, or why they are not and offers to ask again. */
export function FolderLine() {
  const { isFetching, failure } = useStore(folderStore)
  if (failure !== null)
    return (
      <div className='banner' role='alert'>
        <p>{say('fetch.failed', { reason: failure })}</p>
        <button type='button' className='btn' onClick={fetchFolder}>
          {say('fetch.again')}
        </button>
      </div>
    )
  return isFetching ? (
    <p className='banner' role='status'>
      {say('fetch.folder')}
    </p>
  ) : null
}
