/** A modal slip over the sheet, and the button that closes it. */
import { type ReactNode, useEffect, useRef } from 'react'
import { say } from '../../../text/front'
import { showDialog } from '../../stores/viewStore'

export function Slip({ title, onClose, children }: { title: string; onClose: () => void; children: ReactNode }) {
  const ref = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    const dialog = ref.current
    if (dialog && !dialog.open) dialog.showModal()
    return () => dialog?.close()
  }, [])
  return (
    <dialog ref={ref} aria-label={title} onCancel={onClose}>
      <h2 className='head'>{title}</h2>
      {children}
    </dialog>
  )
}

export function CloseFoot() {
  return (
    <div className='foot'>
      <button type='button' className='btn' onClick={() => showDialog(null)}>
        {say('app.close')}
      </button>
    </div>
  )
}
