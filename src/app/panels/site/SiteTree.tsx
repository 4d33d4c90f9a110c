/** The site list on screen: an ARIA tree with one tab stop. Arrows move and select; Enter does what the hand would do. */
import { type KeyboardEvent, useEffect, useMemo, useRef } from 'react'
import { useStore } from 'zustand'
import { say } from '../../../text'
import { chooseThing, toggleFold, viewStore } from '../../stores/viewStore'
import { useBelief } from '../useBelief'
import { useSpeaker } from '../useSpeaker'
import { type TreeNode, siteTree, visibleNodes } from './siteTree'

export interface SiteTreeProps {
  /** Enter on the chosen thing. */
  readonly onAct: () => void
}

export function SiteTree({ onAct }: SiteTreeProps) {
  const belief = useBelief()
  const speaker = useSpeaker()
  const persons = useStore(viewStore, (view) => view.persons)
  const chosen = useStore(viewStore, (view) => view.node)
  const folded = useStore(viewStore, (view) => view.folded)
  const nodes = useMemo(() => siteTree(belief, persons, speaker), [belief, persons, speaker])
  const shown = visibleNodes(nodes, folded)
  const thing = useStore(viewStore, (view) => view.thing)
  const index = indexOf(shown, chosen, thing)
  const tree = useRef<HTMLDivElement>(null)
  const typed = useRef({ text: '', at: 0 })

  useEffect(() => {
    tree.current?.querySelector('[aria-selected="true"]')?.scrollIntoView({ block: 'nearest' })
  }, [chosen])

  const move = (to: number, node = shown[Math.min(shown.length - 1, Math.max(0, to))]) => {
    if (!node) return
    chooseThing(node.thing === undefined ? null : node.thing, node.key)
    const row = tree.current?.querySelector<HTMLElement>(`[data-key="${CSS.escape(node.key)}"]`)
    row?.focus({ preventScroll: false })
  }

  const onKeyDown = (event: KeyboardEvent) => {
    const node = shown[index]
    if (!node || event.altKey || event.ctrlKey || event.metaKey) return
    const steps: Record<string, () => void> = {
      ArrowDown: () => move(index + 1),
      ArrowUp: () => move(index - 1),
      PageDown: () => move(index + 10),
      PageUp: () => move(index - 10),
      Home: () => move(0),
      End: () => move(shown.length - 1),
      ArrowRight: () => (folded.includes(node.key) ? toggleFold(node.key) : move(index + 1)),
      ArrowLeft: () =>
        node.children.length > 0 && !folded.includes(node.key) ? toggleFold(node.key) : move(parentIndex(shown, index)),
      Enter: onAct,
    }
    const step = steps[event.key]
    if (!step) return
    event.preventDefault()
    event.stopPropagation()
    typed.current = { text: '', at: 0 }
    step()
  }

  return (
    <div ref={tree} className='tree' role='tree' aria-label={say('site.list')} onKeyDown={onKeyDown}>
      {shown.map((node, i) => (
        <Row
          key={node.key}
          node={node}
          isChosen={i === index}
          isFolded={folded.includes(node.key)}
          onPick={() => move(i)}
          onAgain={onAct}
        />
      ))}
    </div>
  )
}

/** An item that was taken or laid down stands in another place of the list: the choice follows it. */
function indexOf(shown: readonly TreeNode[], key: string, thing: string | null): number {
  const exact = shown.findIndex((node) => node.key === key)
  if (exact >= 0) return exact
  return Math.max(
    0,
    shown.findIndex((node) => thing !== null && node.thing === thing),
  )
}

function parentIndex(shown: readonly TreeNode[], index: number): number {
  const level = shown[index]?.level ?? 1
  for (let i = index - 1; i >= 0; i--) if (shown[i]!.level < level) return i
  return index
}

interface RowProps {
  readonly node: TreeNode
  readonly isChosen: boolean
  readonly isFolded: boolean
  readonly onPick: () => void
  readonly onAgain: () => void
}

function Row({ node, isChosen, isFolded, onPick, onAgain }: RowProps) {
  const hasChildren = node.children.length > 0
  return (
    <div
      role='treeitem'
      aria-level={node.level}
      aria-selected={isChosen}
      aria-expanded={hasChildren ? !isFolded : undefined}
      tabIndex={isChosen ? 0 : -1}
      className={isChosen ? 'sel' : undefined}
      data-key={node.key}
      data-thing={node.thing === null ? 'crew' : node.thing}
      onClick={() => (isChosen ? onAgain() : onPick())}
    >
      <span
        className='tw'
        aria-hidden='true'
        onClick={(event) => {
          if (!hasChildren) return
          event.stopPropagation()
          toggleFold(node.key)
        }}
      >
        {hasChildren ? (isFolded ? '▸' : '▾') : ''}
      </span>
      <span>{node.name}</span>
      <span className='st'>{node.status}</span>
    </div>
  )
}
