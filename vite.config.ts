// One configuration for the app's build and for the tests. The tools' own configurations are in .ci/.

import react from '@vitejs/plugin-react'
import type { Plugin } from 'vite'
import { defineConfig } from 'vitest/config'
import { packedJson } from './.ci/packedJson.mjs'
import { writeEngineDigest } from './.ci/digest.mjs'
import { folderCards } from './.ci/folderCards.mjs'
import { offlineApp } from './.ci/offlineApp.mjs'
import { recordedRuns } from './.ci/recordedRuns.mjs'
import { sharedWorkers } from './.ci/sharedWorkers.mjs'

/** The engine's digest is a generated module; it is written before anything reads it. */
function engineDigest(): Plugin {
  return { name: 'engine-digest', configResolved: ({ root }) => writeEngineDigest(root) }
}

/** The development server puts a script and styles into the page, which the strict policy of index.html would refuse. */
function relaxedWhileDeveloping(): Plugin {
  return {
    name: 'relaxed-while-developing',
    apply: 'serve',
    transformIndexHtml: (html) => html.replace(/<meta\s+http-equiv="Content-Security-Policy"[^>]*>/, ''),
  }
}

export default defineConfig({
  plugins: [
    engineDigest(),
    folderCards(),
    packedJson(),
    recordedRuns(),
    sharedWorkers(),
    offlineApp(),
    react(),
    relaxedWhileDeveloping(),
  ],
  // Another port is taken, and printed, when this one is in use.
  preview: { port: 4173, strictPort: false },
  build: {
    // Fonts and pictures stay files of our own origin; the page's policy allows no data: fonts.
    assetsInlineLimit: 0,
    // What a worker fetches later it fetches itself: it has no document to put a hint into.
    modulePreload: { resolveDependencies: (_url, deps, { hostId }) => (/[wW]orker/.test(hostId) ? [] : deps) },
    chunkSizeWarningLimit: 800,
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            // Everything that the first page needs. One of these in the 3D chunk would make the first page load 3D.
            {
              name: 'react',
              test: /node_modules[\\/](react|react-dom|scheduler|zustand|use-sync-external-store)[\\/]/,
              priority: 30,
            },
            // Loaded when the Site is first opened.
            {
              name: 'scene3d',
              test: /node_modules[\\/](three|@react-three|its-fine|react-use-measure|suspend-react)[\\/]/,
              priority: 20,
            },
          ],
        },
      },
    },
  },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          environment: 'node',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/browser/**'],
          setupFiles: ['tests/support/failOnConsole.ts', 'tests/support/sameDraws.ts'],
          // Files share what they loaded: the engine keeps nothing between two calls, and loading it again costs more than
          // most of its tests.
          isolate: false,
          testTimeout: 20_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          environment: 'node',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/support/serveApp.ts'],
          fileParallelism: false,
          testTimeout: 60_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
})
