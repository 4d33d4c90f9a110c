/** Head of the drawing office: what is on the board, what is done with it as a whole, and the shelf when it is empty. */
import { useRef, useState } from 'react'
import { useStore } from 'zustand'
import { say } from '../../../text/office'
import { download } from '../../storage/download'
import { packShelf } from '../../storage/packShelf'
import { shelf } from '../../storage/shelf'
import { draftText } from '../../stores/office/draft'
import { clearBoard, officeStore, openFiles, openShipped, redo, undo } from '../../stores/office/officeStore'
import { goTo } from '../../stores/viewStore'
import { OtherBoards } from './OtherBoards'
import { TryIt } from './TryIt'

export function OfficeHead({ isSound }: { isSound: boolean }) {
  const { draft, past, future, refused, isKept, isApart } = useStore(officeStore)
  return (
    <>
      <div className='officehead'>
        <h1 className='head'>
          {draft
            ? say(draft.kind === 'pack' ? 'office.pack' : 'office.scenario', { id: String(draft.file.id) })
            : say('office.title')}
        </h1>
        {draft && (
          <>
            <button
              type='button'
              className='btn'
              disabled={past.length === 0}
              onClick={undo}
              aria-keyshortcuts='Control+Z'
            >
              {say('office.undo')}
            </button>
            <button
              type='button'
              className='btn'
              disabled={future.length === 0}
              onClick={redo}
              aria-keyshortcuts='Control+Y'
            >
              {say('office.redo')}
            </button>
            <button
              type='button'
              className='btn'
              onClick={() => download(`${draft.kind}.json`, draftText(draft, 'file'))}
            >
              {say('office.saveFile')}
            </button>
            <button type='button' className='btn' onClick={() => download('text.en.json', draftText(draft, 'words'))}>
              {say('office.saveWords')}
            </button>
            <TryIt draft={draft} isSound={isSound} />
            <Clear />
          </>
        )}
        <OpenFiles />
        <button type='button' className='btn go' onClick={() => goTo('depot')}>
          {say('office.back')}
        </button>
      </div>
      {!isKept && (
        <p className='banner' role='alert'>
          {say('office.notKept')}
        </p>
      )}
      {isApart && (
        <p className='banner' role='alert'>
          {say('office.apart')}
        </p>
      )}
      <OtherBoards />
      {refused.length > 0 && (
        <div role='alert' className='officerefused'>
          <p>{say('office.refused', { count: refused.length })}</p>
          <ul>
            {refused.slice(0, 20).map((it) => (
              <li key={`${it.path} ${it.found}`}>
                <b className='n'>{it.path}</b> {say('office.found', { found: it.found, allowed: it.allowed })}
              </li>
            ))}
          </ul>
        </div>
      )}
      {!draft && <Shelf />}
    </>
  )
}

/** What is on the board may not be a file yet, so it is asked twice. */
function Clear() {
  const [isAsked, setIsAsked] = useState(false)
  if (!isAsked)
    return (
      <button type='button' className='btn' onClick={() => setIsAsked(true)}>
        {say('office.clear')}
      </button>
    )
  return (
    <span role='group' className='officeasked' aria-label={say('office.clear')}>
      <span>{say('office.clearAsk')}</span>
      <button type='button' className='btn' onClick={clearBoard} autoFocus>
        {say('office.clearYes')}
      </button>
      <button type='button' className='btn' onClick={() => setIsAsked(false)}>
        {say('office.clearNo')}
      </button>
    </span>
  )
}

function OpenFiles() {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <button type='button' className='btn' onClick={() => input.current?.click()}>
        {say('office.openFiles')}
      </button>
      <input
        ref={input}
        type='file'
        multiple
        accept='application/json,.json'
        className='vh'
        tabIndex={-1}
        aria-label={say('office.files')}
        onChange={(event) => {
          const files = [...(event.target.files ?? [])]
          if (files.length > 0) void openFiles(files)
          event.target.value = ''
        }}
      />
    </>
  )
}

function Shelf() {
  return (
    <section className='scroll officeshelf' aria-label={say('office.shelf')}>
      <p className='gap'>{say('office.empty')}</p>
      <h2 className='sec gap'>{say('office.shelf')}</h2>
      {shelf.map(({ id, words }) => (
        <button key={id} type='button' className='pick' onClick={() => openShipped({ kind: 'scenario', id })}>
          {say('office.scenario', { id })} <span className='q r'>{words['scenario.name'] ?? ''}</span>
        </button>
      ))}
      {packShelf.map(({ id, name }) => (
        <button key={id} type='button' className='pick' onClick={() => openShipped({ kind: 'pack', id })}>
          {say('office.pack', { id })} <span className='q r'>{name}</span>
        </button>
      ))}
    </section>
  )
}
