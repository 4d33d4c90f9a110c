/** Pickable things as numbers in the vertices, so that selection is one uniform. The numbers live as long as the page. */
const tags = new Map<string, number>([['', 0]])

/** 0 is scenery, which is never selected. */
export function tagOf(id: string): number {
  let tag = tags.get(id)
  if (tag === undefined) {
    tag = tags.size
    tags.set(id, tag)
  }
  return tag
}

/** What the uniform of a selection holds: -1 when nothing is selected. */
export const selectedTag = (id: string | null | undefined): number => (id ? tagOf(id) : -1)
