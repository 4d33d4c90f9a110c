/** Caution, settings, the table of keys and the hint, each a modal slip. */
import { useStore } from 'zustand'
import { say } from '../../../text/front'
import { keyTable } from '../../input/keyTable'
import { readCaution, setTheme, settingsStore } from '../../stores/settingsStore'
import { themes } from '../../stores/theme'
import { showDialog, viewStore } from '../../stores/viewStore'
import { folderStore } from '../folder/loadFolder'
import { CloseFoot, Slip } from './Slip'

export function Dialogs() {
  const dialog = useStore(viewStore, (view) => view.dialog)
  const folder = useStore(folderStore, (load) => load.folder)
  const hasRead = useStore(settingsStore, (settings) => settings.hasReadCaution)
  if (!hasRead || dialog === 'caution') return <Caution />
  if (dialog === 'settings') return <SettingsSlip />
  if (dialog === 'keys') return <Keys />
  if (dialog === 'hint' && folder) return <folder.Hint />
  return null
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
