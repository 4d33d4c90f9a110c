/** One frame of the scene in a browser without a graphics card. Builds the scene's own page: half a minute. */
import { closeScenes, openScene } from '../support/openScene'
import type { Row } from './measure'

export async function frameRow(): Promise<Row> {
  const { page, close } = await openScene('at=receive-step&view=ground')
  const taken = await page.evaluate(() => window.sceneProbe!.time(20))
  const { calls, triangles } = await page.evaluate(() => window.sceneProbe!.info())
  await close()
  await closeScenes()
  const note = `800 × 600, drawn by software and read back; ${calls} calls, ${triangles} triangles`
  return { name: 'one frame of the scene', unit: 'ms', measured: taken, best: taken, target: null, note }
}
