/** Caution, settings and the table of keys, each a modal slip. */
import { type ReactNode, useEffect, useRef } from 'react'
import { useStore } from 'zustand'
import { say } from '../../../text'
import { keyTable } from '../../input/keyTable'
import { readCaution, setTheme, settingsStore } from '../../stores/settingsStore'
import { themes } from '../../stores/theme'
import { showDialog, viewStore } from '../../stores/viewStore'
import { rulesOfAct } from '../../storage/findRule'
import { jobStore } from '../../stores/jobStore'
import { useSpeaker } from '../useSpeaker'

export function Dialogs() {
  const dialog = useStore(viewStore, (view) => view.dialog)
  const hasRead = useStore(settingsStore, (settings) => settings.hasReadCaution)
  if (!hasRead || dialog === 'caution') return <Caution />
  if (dialog === 'settings') return <SettingsSlip />
  if (dialog === 'keys') return <Keys />
  if (dialog === 'hint') return <Hint />
  return null
}

function Slip({ title, onClose, children }: { title: string; onClose: () => void; children: ReactNode }) {
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

function Caution() {
  const close = () => {
    readCaution()
    showDialog(null)
  }
  return (
    <Slip title={say('caution.title')} onClose={close}>
      <p>{say('app.caution.full')}</p>
      <p className='gap'>{say('caution.pack')}</p>
      <p className='gap'>{say('caution.physics')}</p>
      <div className='foot'>
        <button type='button' className='btn go' onClick={close} autoFocus>
          {say('caution.read')}
        </button>
      </div>
    </Slip>
  )
}

function SettingsSlip() {
  const theme = useStore(settingsStore, (settings) => settings.theme)
  return (
    <Slip title={say('app.settings')} onClose={() => showDialog(null)}>
      <h3 className='sec gap'>{say('settings.theme')}</h3>
      <div className='seg' role='radiogroup' aria-label={say('settings.theme')}>
        {themes.map((each) => (
          <button
            key={each}
            type='button'
            role='radio'
            aria-checked={each === theme}
            className='btn'
            onClick={() => setTheme(each)}
          >
            {say(`settings.theme.${each}`)}
          </button>
        ))}
      </div>
      <p className='note gap'>{say('settings.motion')}</p>
      <CloseFoot />
    </Slip>
  )
}

function Keys() {
  return (
    <Slip title={say('app.keys')} onClose={() => showDialog(null)}>
      <table>
        <tbody>
          {keyTable.map((entry) => (
            <tr key={entry.intent}>
              <td className='n'>{entry.shown}</td>
              <td>{say(`key.${entry.intent}`)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <CloseFoot />
    </Slip>
  )
}

/** What the rules ask of the act that is open, or was ordered last: only when asked, only in practice. */
function Hint() {
  const speaker = useSpeaker()
  const sheet = useStore(viewStore, (view) => view.sheet)
  const last = useStore(viewStore, (view) => view.lasts[0])
  const pack = useStore(jobStore, (job) => job.head?.pack ?? '')
  const act = sheet?.act?.split(':')[0] ?? last?.do
  const rules = act === undefined ? [] : rulesOfAct(pack, act)
  return (
    <Slip title={act === undefined ? say('hint.title') : speaker.say(`action.${act}`)} onClose={() => showDialog(null)}>
      <p className='note'>{say('hint.note')}</p>
      <ul className='hints'>
        {rules.map((rule) => (
          <li key={rule.id}>
            {speaker.say(rule.asks)} <span className='q'>{rule.source}</span>
          </li>
        ))}
      </ul>
      {rules.length === 0 && <p className='gap'>{say('hint.none')}</p>}
      <CloseFoot />
    </Slip>
  )
}

function CloseFoot() {
  return (
    <div className='foot'>
      <button type='button' className='btn' onClick={() => showDialog(null)}>
        {say('app.close')}
      </button>
    </div>
  )
}
