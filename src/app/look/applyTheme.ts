/** Puts a theme's variables on the page through the style object: the page's policy refuses written styles. */
import type { Theme } from '../stores/theme'
import { variablesOf, variablesOnPaper } from '../tokens'

export function applyTheme(theme: Theme): void {
  document.documentElement.dataset.theme = theme
  write(variablesOf(theme), theme === 'dark')
}

/** Paper is white and ink dark, also when it is printed from a dark screen. */
export function applyPaper(): void {
  write(variablesOnPaper(), false)
}

function write(variables: Readonly<Record<string, string>>, isDark: boolean): void {
  const { style } = document.documentElement
  style.colorScheme = isDark ? 'dark' : 'light'
  for (const [name, value] of Object.entries(variables)) style.setProperty(name, value)
}
