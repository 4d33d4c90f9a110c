/**
 * A node is held when some chain of elements leads from it to remote earth. Current sources hold nothing, neither does
 * an admittance of zero; magnetic coupling passes power but holds no potential.
 */
import type { Complex } from '../../math/complex'
import type { Element } from './circuit'
import type { NodeName } from './unsolvable'
import { REMOTE_EARTH } from './unsolvable'

/** The first node in `nodes` that nothing ties to remote earth. */
export function findFloatingNode(nodes: readonly NodeName[], elements: readonly Element[]): NodeName | undefined {
  const parentByNode = new Map<NodeName, NodeName>()
  const root = (node: NodeName): NodeName => {
    let at = node
    for (let next = parentByNode.get(at); next !== undefined; next = parentByNode.get(at)) at = next
    return at
  }
  const join = (a: NodeName, b: NodeName): void => {
    const rootA = root(a)
    const rootB = root(b)
    if (rootA !== rootB) parentByNode.set(rootA, rootB)
  }
  for (const element of elements) for (const [a, b] of tiesOf(element)) join(a, b)
  const earth = root(REMOTE_EARTH)
  return nodes.find((node) => root(node) !== earth)
}

function tiesOf(element: Element): readonly (readonly [NodeName, NodeName])[] {
  switch (element.kind) {
    case 'impedance':
    case 'voltage':
      return [[element.from, element.to]]
    case 'admittance':
      return isZero(element.admittance) ? [] : [[element.from, element.to]]
    case 'current':
      return []
    case 'coupled':
      return element.branches.map((branch) => [branch.from, branch.to] as const)
    case 'shunt':
      return element.nodes.flatMap((node, i) =>
        element.admittance[i]!.every(isZero) ? [] : [[node, REMOTE_EARTH] as const],
      )
    case 'electrodes':
      return element.nodes.map((node) => [node, REMOTE_EARTH] as const)
  }
}

function isZero(value: Complex): boolean {
  return value.re === 0 && value.im === 0
}
