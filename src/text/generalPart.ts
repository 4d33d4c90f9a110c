/** The part of a sentence that is so of every run: clauses with a placeholder, which only a finding fills, are left out. */
export function generalPart(sentence: string): string {
  const clauses = sentence.split(/(?<=[:;.?])\s+/)
  const isGeneral = (clause: string | undefined): clause is string => clause !== undefined && !clause.includes('{')
  return clauses
    .flatMap((clause, i) => {
      if (!isGeneral(clause)) return []
      const begins = isGeneral(clauses[i - 1]) ? clause : clause.charAt(0).toUpperCase() + clause.slice(1)
      return [isGeneral(clauses[i + 1]) ? begins : begins.replace(/[:;,]$/, '.')]
    })
    .join(' ')
}
