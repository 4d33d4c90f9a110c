// Builds the page that shows the scene alone (scenePage/) and answers where it lies. The app's own build is not touched.

import { fileURLToPath } from 'node:url'
import react from '@vitejs/plugin-react'
import { build } from 'vite'

const root = fileURLToPath(new URL('./scenePage', import.meta.url))

/** @param {string} outDir */
export async function buildScenePage(outDir) {
  await build({
    root,
    configFile: false,
    base: './',
    logLevel: 'error',
    plugins: [react()],
    build: { outDir, emptyOutDir: true, chunkSizeWarningLimit: 2000, reportCompressedSize: false },
  })
}
