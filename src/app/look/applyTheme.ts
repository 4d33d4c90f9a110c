/** Puts a theme's variables on the page through the style object: the page's policy refuses written styles. */
import type { Theme } from '../stores/theme'
import { variablesOf } from '../tokens'

export function applyTheme(theme: Theme): void {
  const page = document.documentElement
  page.dataset.theme = theme
  page.style.colorScheme = theme === 'dark' ? 'dark' : 'light'
  for (const [name, value] of Object.entries(variablesOf(theme))) page.style.setProperty(name, value)
}
