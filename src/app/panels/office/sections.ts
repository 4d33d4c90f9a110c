/** How a training officer thinks of a pack and of a scenario: which part of the file is found under which heading. */
import { type FormField, type FormNode, isObject } from '../../../files/form/formNode'
import { formOf } from '../../../files/form/formOf'
import { packForm } from '../../../files/rulePack/ruleForm'
import { scenarioSchema } from '../../../files/scenario/schema'
import { wordsSchema } from '../../../files/words/read'
import { say } from '../../../text/office'
import type { Draft } from '../../stores/office/draft'
import { type FileName, type Place, valueAt } from '../../stores/office/place'

export interface Section {
  readonly id: string
  readonly title: string
  readonly file: FileName
  readonly fields: readonly FormField[]
  /** Of its rules only those of this element. */
  readonly element?: string
  /** Keys of the file that no form knows are shown here. */
  readonly hasStrangers?: true
}

const scenarioParts = {
  place: ['id', 'date', 'startsAtS', 'dark', 'frequencyHz', 'weather', 'weatherChanges', 'crew'],
  soil: ['soil', 'grounds', 'publicApproachM', 'livestock'],
  network: ['feeders', 'switches', 'conductors', 'section', 'jumpers', 'sectionJumpers', 'parallels', 'horizonS'],
  low: ['lv', 'transformers', 'embedded', 'premises'],
  pole: ['pole', 'metalwork', 'stay', 'truck'],
  gear: ['items'],
  livenings: ['livenings', 'triggers', 'casualties', 'draws'],
  task: ['work', 'control', 'hazards', 'nextPole', 'whileAway'],
  limits: ['body', 'ranges', 'contact'],
} as const

/** Set by the format: nothing to fill in. */
export const fixed: readonly string[] = ['format', 'version']

export function sectionsOf(draft: Draft): readonly Section[] {
  const words: Section = {
    id: 'words',
    title: say('section.words'),
    file: 'words',
    fields: fieldsOf(formOf(wordsSchema)),
    hasStrangers: true,
  }
  return [...(draft.kind === 'pack' ? packSections(draft) : scenarioSections(draft)), words]
}

function fieldsOf(form: FormNode): readonly FormField[] {
  return form.kind === 'group' ? form.fields.filter((it) => !fixed.includes(it.key)) : []
}

/** What has no heading yet, and what no form knows, stands under the last. */
function scenarioSections({ file }: Draft): readonly Section[] {
  const fields = fieldsOf(formOf(scenarioSchema))
  const headed = Object.entries(scenarioParts).map(
    ([id, keys]): Section => ({
      id,
      title: say(`section.${id as keyof typeof scenarioParts}`),
      file: 'file',
      fields: keys.flatMap((key) => fields.filter((it) => it.key === key)),
    }),
  )
  const shown = headed.flatMap((it) => it.fields)
  const others = fields.filter((it) => !shown.includes(it))
  const known = [...fixed, ...fields.map(({ key }) => key)]
  if (others.length === 0 && Object.keys(file).every((key) => known.includes(key))) return headed
  const other: Section = { id: 'other', title: say('section.other'), file: 'file', fields: others, hasStrangers: true }
  return [...headed, other]
}

/** The same at every change of a draft. */
const packFields: readonly FormField[] = fieldsOf(packForm())

function packSections(draft: Draft): readonly Section[] {
  const said = wordsIn(draft)
  return [
    {
      id: 'pack',
      title: say('section.pack'),
      file: 'file',
      fields: packFields.filter((it) => it.key !== 'rules'),
      hasStrangers: true,
    },
    ...elementsOf(draft).map(
      (element): Section => ({
        id: `element ${element}`,
        title: said[`element.${element}`] ?? element,
        file: 'file',
        fields: packFields.filter((it) => it.key === 'rules'),
        element,
      }),
    ),
  ]
}

/** Those of the pack, and others that its rules name. */
function elementsOf({ file }: Draft): readonly string[] {
  const named = Array.isArray(file.elements) ? file.elements : []
  return [...new Set([...named, ...rulesOf(file).map((it) => it.element)].map(String))]
}

const rulesOf = (file: Draft['file']): readonly Readonly<Record<string, unknown>>[] =>
  Array.isArray(file.rules) ? file.rules.filter(isObject) : []

export const wordsIn = ({ words }: Draft): Readonly<Record<string, string>> =>
  isObject(words.words) ? (words.words as Readonly<Record<string, string>>) : {}

/** Keys of the two sentences of a rule. */
export const sentenceKeys = (rule: Readonly<Record<string, unknown>>): readonly [asks: string, reason: string] => [
  String(rule.asks ?? `${String(rule.id)}.asks`),
  String(rule.reason ?? `${String(rule.id)}.reason`),
]

export const ruleSentences = ({ kind, file }: Draft): ReadonlySet<string> =>
  new Set(kind === 'pack' ? rulesOf(file).flatMap(sentenceKeys) : [])

/** Under which heading a place is shown, and what has to be opened for it beside what it lies in. */
export function findSection(draft: Draft, place: Place): { readonly section: string; readonly within: Place } {
  const [file, key, index] = place
  if (file === 'words') {
    const rules = draft.kind === 'pack' && Array.isArray(draft.file.rules) ? (draft.file.rules as unknown[]) : []
    const of = rules.findIndex((it) => isObject(it) && sentenceKeys(it).includes(String(index)))
    return of < 0 ? { section: 'words', within: [] } : findSection(draft, ['file', 'rules', of])
  }
  if (draft.kind === 'pack') {
    if (key !== 'rules') return { section: 'pack', within: [] }
    const rule = valueAt(draft.file, ['rules', index ?? 0])
    return { section: `element ${String(isObject(rule) ? rule.element : elementsOf(draft)[0])}`, within: place }
  }
  const found = Object.entries(scenarioParts).find(([, keys]) => (keys as readonly unknown[]).includes(key))
  return { section: found?.[0] ?? 'other', within: [] }
}
