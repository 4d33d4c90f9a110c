// Who may import whom. Imports of types count: a type is a dependency like any other.
// tests/architecture/importRules.test.ts plants one violation of each rule and expects it to be found.

/** Inside the engine imports go down this list, never up. */
export const engineLayers = [
  'units',
  'math',
  'physics',
  'gear',
  'site',
  'hazard',
  'actions',
  'timeline',
  'rules',
  'demonstration',
  'debrief',
]

/** From `from` only into `from` itself and into `allowed`. */
const only = (name, from, allowed, comment) => ({
  name,
  severity: 'error',
  comment,
  from: { path: from },
  to: { pathNot: [from, ...allowed] },
})

const never = (name, from, to, comment) => ({ name, severity: 'error', comment, from, to })

const layerRules = engineLayers
  .slice(0, -1)
  .map((layer, depth) =>
    never(
      `engine-layer-${layer}`,
      { path: `^src/engine/${layer}/` },
      { path: `^src/engine/(${engineLayers.slice(depth + 1).join('|')})/` },
      'inside the engine imports go downward only',
    ),
  )

const mathLibrary = '^node_modules/@stdlib/'
const schemaLibrary = '^node_modules/(valibot|@valibot)/'
/** JSON with positions, and SHA-256 in plain script: the same in node and browser. */
const formatLibraries = '^node_modules/(jsonc-parser|@noble/hashes)/'
const reactLibrary = '^node_modules/(react|react-dom|three|@react-three|@types/(react|react-dom|three))/'
const door = '^src/engine/index[.]ts$'

export default {
  forbidden: [
    only(
      'engine-is-closed',
      '^src/engine/(?!math/)',
      ['^src/engine/'],
      'the engine imports only the engine: no package, no node, not even a type',
    ),
    only(
      'math-takes-one-library',
      '^src/engine/math/',
      ['^src/engine/units/', mathLibrary],
      'engine/math alone takes the portable maths library',
    ),
    never(
      'math-library-stays-in-math',
      { path: '^(src|tests)/', pathNot: '^src/engine/math/' },
      { path: mathLibrary },
      'portable functions come from engine/math',
    ),
    never(
      'physics-are-strangers',
      { path: '^src/engine/physics/([^/]+)/' },
      { path: '^src/engine/physics/', pathNot: '^src/engine/physics/$1/' },
      'one field of physics knows nothing of another',
    ),
    never(
      'engine-has-one-door',
      { path: '^src/(?!engine/)' },
      { path: '^src/engine/', pathNot: door },
      'everyone enters the engine by engine/index.ts',
    ),
    never('engine-does-not-use-its-door', { path: '^src/engine/' }, { path: door }, 'the door is for visitors'),
    ...layerRules,
    only(
      'files-scope',
      '^src/files/',
      [door, schemaLibrary, formatLibraries],
      'files know the engine, the schema library, and what reads and digests text',
    ),
    only('text-scope', '^src/text/', [door], 'words know the engine only'),
    only(
      'reports-scope',
      '^src/reports/',
      [door, '^src/text/', '^src/files/'],
      'reports know the engine, the words and the formats',
    ),
    only(
      'records-scope',
      '^src/records/',
      [door, '^src/text/', '^src/files/'],
      'records know the engine, the words and the formats',
    ),
    never(
      'app-and-cli-are-apart',
      { path: '^src/(app|cli)/' },
      { path: '^src/(app|cli)/', pathNot: '^src/$1/' },
      'app and cli never meet',
    ),
    never(
      'node-stays-in-cli',
      { path: '^src/', pathNot: '^src/cli/' },
      { dependencyTypes: ['core'] },
      'only the command line knows node',
    ),
    never(
      'react-stays-in-app',
      { path: '^src/', pathNot: '^src/app/' },
      { path: reactLibrary },
      'only the app knows the browser',
    ),
    never(
      'stores-are-headless',
      { path: '^src/app/stores/' },
      { path: `^src/app/(?!stores/|storage/|workers/)|${reactLibrary}` },
      'a store can be run without a screen',
    ),
    never(
      'scene-and-panels-meet-in-stores',
      { path: '^src/app/(scene|panels)/' },
      { path: '^src/app/(scene|panels)/', pathNot: '^src/app/$1/' },
      'scene and panels meet only in stores',
    ),
    never(
      'src-does-not-know-tests',
      { path: '^src/' },
      { path: '^(tests|[.]ci)/' },
      'tests know the program, not the other way round',
    ),
    never('no-cycles', {}, { circular: true }, 'two files that need each other are one file, or three'),
    never(
      'no-orphans',
      // The service worker is an entry of its own: .ci/offlineApp.mjs names it.
      { orphan: true, path: '^src/', pathNot: '(main[.]tsx?|workers/offline[.]ts)$' },
      {},
      'nobody imports it and it imports nobody',
    ),
    never('no-unresolved', {}, { couldNotResolve: true }, 'what cannot be found cannot be judged'),
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'types', 'default'] },
  },
}
