// Builds the page that shows the scene alone (scenePage/) and answers where it lies. The app's own build is not touched.

import { fileURLToPath } from 'node:url'
import react from '@vitejs/plugin-react'
import { build } from 'vite'

const root = fileURLToPath(new URL('./scenePage', import.meta.url))

/** The scene alone asks for none of them; the app's own plugin packs them. */
const noRecordedRuns = {
  name: 'no-recorded-runs',
  enforce: /** @type {const} */ ('pre'),
  /** @param {string} id */
  load: (id) => (id.endsWith('.json?runs') ? "export default '{}'" : undefined),
}

/** @param {string} outDir */
export async function buildScenePage(outDir) {
  await build({
    root,
    configFile: false,
    base: './',
    logLevel: 'error',
    plugins: [react(), noRecordedRuns],
    worker: { format: 'es', plugins: () => [noRecordedRuns] },
    build: { outDir, emptyOutDir: true, chunkSizeWarningLimit: 2000, reportCompressedSize: false },
  })
}
