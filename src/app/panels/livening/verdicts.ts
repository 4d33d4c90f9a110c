/** One word per zone, and how it is drawn: strokes of the tally, joints that the current passes. */
import type { Exposure } from '../../../engine'
import type { Joint, PostureName } from '../drawing/Figure'

const strokes: Readonly<Record<string, number>> = {
  'AC-1': 0,
  'AC-2': 1,
  'AC-3': 2,
  'AC-4.1': 3,
  'AC-4.2': 4,
  'AC-4.3': 5,
}

export const strokesOf = (exposure: Exposure): number => strokes[exposure.zone] ?? 0

const joints: readonly (readonly [string, readonly Joint[], PostureName])[] = [
  ['hand-hand', ['handLeft', 'elbowLeft', 'neck', 'elbowRight', 'handRight'], 'standing'],
  ['hand-thigh', ['handLeft', 'elbowLeft', 'neck', 'hip', 'thigh'], 'reaching'],
  ['hand-metalwork', ['handLeft', 'elbowLeft', 'neck', 'elbowRight', 'handRight'], 'reaching'],
  ['pace', ['footLeft', 'kneeLeft', 'hip', 'kneeRight', 'footRight'], 'pacing'],
  ['thigh-feet', ['thigh', 'kneeRight', 'footRight'], 'reaching'],
  ['bystander-pace', ['footLeft', 'kneeLeft', 'hip', 'kneeRight', 'footRight'], 'pacing'],
]

const fromHand: readonly Joint[] = ['handLeft', 'elbowLeft', 'neck', 'hip', 'kneeRight', 'footRight']

export function drawnPath(exposure: Exposure): { readonly path: readonly Joint[]; readonly posture: PostureName } {
  const known = joints.find(([id]) => id === exposure.path)
  return known ? { path: known[1], posture: known[2] } : { path: fromHand, posture: 'standing' }
}

/** The worst of each person, persons in order; worst by what is judged over its limit. */
export function worstByPerson(exposures: readonly Exposure[]): readonly Exposure[] {
  const worst = new Map<string, Exposure>()
  for (const it of exposures) {
    const before = worst.get(it.person)
    if (!before || it.judged / it.limit > before.judged / before.limit) worst.set(it.person, it)
  }
  return [...worst.values()]
}
