/** Who is at the screen and how the sheet looks to them. Kept between visits. */
import { createStore } from 'zustand/vanilla'
import { keep } from '../storage/keep'
import { type Theme, themes } from './theme'

export interface Profile {
  readonly id: string
  readonly name: string
}

export interface Settings {
  readonly theme: Theme
  readonly people: readonly Profile[]
  readonly person: string | null
  readonly hasReadCaution: boolean
}

/** As this machine has it, until somebody chooses. */
function ownTheme(): Theme {
  if (typeof matchMedia === 'undefined') return 'light'
  if (matchMedia('(prefers-contrast: more)').matches) return 'contrast'
  return matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light'
}

const start: Settings = { theme: ownTheme(), people: [], person: null, hasReadCaution: false }

function readSettings(): Settings {
  const kept = keep.read('settings')
  if (typeof kept !== 'object' || kept === null) return start
  const found = kept as Partial<Settings>
  return {
    theme: themes.find((theme) => theme === found.theme) ?? start.theme,
    people: Array.isArray(found.people) ? found.people.filter(isProfile) : [],
    person: typeof found.person === 'string' ? found.person : null,
    hasReadCaution: found.hasReadCaution === true,
  }
}

const isProfile = (it: unknown): it is Profile =>
  typeof it === 'object' &&
  it !== null &&
  typeof (it as Profile).id === 'string' &&
  typeof (it as Profile).name === 'string'

export const settingsStore = createStore<Settings>(() => readSettings())

settingsStore.subscribe((settings) => void keep.write('settings', settings))

export const setTheme = (theme: Theme): void => settingsStore.setState({ theme })

export const readCaution = (): void => settingsStore.setState({ hasReadCaution: true })

export function addPerson(name: string): void {
  const { people } = settingsStore.getState()
  const id = `person-${people.length + 1}`
  settingsStore.setState({ people: [...people, { id, name }], person: id })
}

export const choosePerson = (id: string): void => settingsStore.setState({ person: id })

export function findName(settings: Settings): string | undefined {
  return settings.people.find((it) => it.id === settings.person)?.name
}
