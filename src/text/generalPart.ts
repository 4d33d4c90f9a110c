/** The part of a sentence that is so of every run: clauses with a placeholder, which only a finding fills, are left out. */
export function generalPart(sentence: string): string {
  const clauses = sentence.split(/(?<=[:;.?])\s+/).filter((it) => !it.includes('{'))
  const text = clauses.join(' ').replace(/[:;,]$/, '.')
  return text.charAt(0).toUpperCase() + text.slice(1)
}
