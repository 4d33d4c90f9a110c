/** The words of the drawing office, which are fetched with it. */
import { office } from './en/office'
import { makeSay } from './makeSay'

export const say = makeSay(office)

/** The word that a field has of its own. */
export const findFieldWord = (name: string): string | undefined =>
  (office as Readonly<Record<string, string>>)[`field.${name}`]
