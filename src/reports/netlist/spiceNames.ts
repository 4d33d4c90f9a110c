/**
 * Names that any circuit simulator takes: lower case letters, digits and underlines, each once. Remote earth is 0. A name
 * that would fall together with another one gets a number behind it, in the order in which names are asked for.
 */
export interface SpiceNames {
  /** The safe name of a node; always the same for the same node. */
  node(name: string): string
  /** A fresh node of the netlist's own, behind a part. */
  inner(name: string): string
  /** The name of a part: its kind's letter, then what it is. */
  part(letter: string, name: string): string
  /** Safe name by node, in the order of first use. */
  readonly nodes: ReadonlyMap<string, string>
}

/** Some simulators take these for remote earth. */
const reserved = ['0', 'gnd']

export function spiceNames(): SpiceNames {
  const nodes = new Map<string, string>()
  const usedNodes = new Set(reserved)
  const usedParts = new Set<string>()
  const fresh = (wanted: string, used: Set<string>): string => {
    let name = wanted
    for (let count = 2; used.has(name); count++) name = `${wanted}_${count}`
    used.add(name)
    return name
  }
  return {
    nodes,
    node: (name) => {
      if (name === '0') return '0'
      const known = nodes.get(name)
      if (known !== undefined) return known
      const made = fresh(safe(name), usedNodes)
      nodes.set(name, made)
      return made
    },
    inner: (name) => fresh(safe(name), usedNodes),
    part: (letter, name) => fresh(`${letter}_${safe(name)}`, usedParts),
  }
}

function safe(name: string): string {
  const plain = name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '_')
    .replace(/^_|_$/g, '')
  return /^[a-z]/.test(plain) ? plain : `n_${plain}`
}
