/** Something of the folder that stands at the Depot: a line while it is fetched, and when it could not be. */
import { type ReactNode, useEffect } from 'react'
import { useStore } from 'zustand'
import { say } from '../../../text/front'
import { FetchFailed } from '../shell/Fetched'
import { type Folder, fetchFolder, folderStore } from './loadFolder'

export function InFolder({ children }: { children: (folder: Folder) => ReactNode }) {
  const folder = useStore(folderStore, (load) => load.folder)
  useEffect(fetchFolder, [])
  return folder ? children(folder) : null
}

/** Says that the sheets are on their way, or why they are not. */
export function FolderLine() {
  const { isFetching, failure } = useStore(folderStore)
  if (failure !== null)
    return (
      <div className='banner' role='alert'>
        <FetchFailed reason={failure} />
      </div>
    )
  return isFetching ? (
    <p className='banner' role='status'>
      {say('fetch.folder')}
    </p>
  ) : null
}
