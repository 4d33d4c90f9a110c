/** Words of the scene: what is written at the things. */
import type { Words } from '../words'

export const scene = {
  'scene.name': 'The site, drawn in three dimensions',
  'scene.about': 'about {figure}',
  'scene.lead-current': '{item}, about {figure}',
  'scene.pole-current': 'pole, about {figure}',
  'scene.rise': 'about {figure} to far ground',
  'scene.clash': 'crossing on {phase}, about {figure}',
  'scene.pace-limit': 'one pace = {volts}, tolerable for {seconds:s}',
  'scene.pace-at-barrier': 'one pace at the tape, about {figure}',
  'scene.verdict': '{figure}: {verdict}',
  'scene.contours': 'Contours each {volts}, every fifth heavy',
  'scene.blade': '{blade}: {state}',
  'scene.blade.open': 'seen open',
  'scene.blade.closed': 'seen closed',
  'scene.blade.not-looked': 'not looked at',
  'scene.handle.open': 'handle open',
  'scene.handle.closed': 'handle closed',
  'scene.zone.AC-1': 'not felt',
  'scene.zone.AC-2': 'felt',
  'scene.zone.AC-3': 'cannot let go, may stop breathing',
  'scene.zone.AC-4.1': 'heart at risk',
  'scene.zone.AC-4.2': 'fibrillation possible',
  'scene.zone.AC-4.3': 'fibrillation likely',
  'scene.zone.legs': 'legs lock, may fall',
} as const satisfies Words
