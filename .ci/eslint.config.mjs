// What the type checker cannot say: sizes, and what would make two machines grade one run differently.

import ts from 'typescript-eslint'

// IEEE 754 fixes the result of these to the last bit. Everything else in Math differs between JavaScript engines.
const exactMath = ['sqrt', 'abs', 'min', 'max', 'floor', 'ceil', 'trunc', 'round', 'sign', 'imul', 'PI']

const takeItFromMath = 'use engine/math: this gives different bits in different JavaScript engines'
const wordsBelongToText = 'the engine hands out quantities; they become words in src/text'

const engineSyntax = [
  {
    selector: `MemberExpression[object.name='Math'][property.name!=/^(${exactMath.join('|')})$/]`,
    message: takeItFromMath,
  },
  { selector: "MemberExpression[object.name='Math'][computed=true]", message: takeItFromMath },
  { selector: "VariableDeclarator[init.name='Math']", message: takeItFromMath },
  { selector: "BinaryExpression[operator='**']", message: takeItFromMath },
  { selector: "AssignmentExpression[operator='**=']", message: takeItFromMath },
  { selector: 'ForInStatement', message: 'the order of keys is not a contract' },
]

const engineProperties = [
  ...['toFixed', 'toPrecision', 'toExponential', 'toLocaleString', 'toLocaleUpperCase', 'toLocaleLowerCase'].map(
    (property) => ({ property, message: wordsBelongToText }),
  ),
  { property: 'localeCompare', message: 'compare with < and >: the order must not depend on where the machine stands' },
]

// Types of the outer world reach the rooms between engine and app through the one tsconfig; these names must not.
const outerWorld = ['window', 'document', 'navigator', 'localStorage', 'sessionStorage', 'fetch', 'process', 'Buffer']

const size = (max) => ['error', { max, skipBlankLines: true }]

export default ts.config(
  { ignores: ['dist', 'node_modules', '.mutation', 'tests/gallery/out', 'src/engine/version/engineDigest.ts'] },
  {
    files: ['**/*.{ts,tsx,mjs}'],
    extends: [ts.configs.recommended, ts.configs.stylistic],
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      eqeqeq: 'error',
      'no-var': 'error',
      'prefer-const': 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_' }],
      // An index that was just checked, above all in loops over typed arrays, needs no second check.
      '@typescript-eslint/no-non-null-assertion': 'off',
      // Both have their place: a type for a union, an interface for a thing with fields.
      '@typescript-eslint/consistent-type-definitions': 'off',
    },
  },
  { files: ['src/**/*.{ts,tsx}'], rules: { 'max-lines': size(400) } },
  { files: ['tests/**/*.{ts,tsx}'], rules: { 'max-lines': size(600) } },
  // Catalogues of words and of gear are as long as what they list.
  { files: ['src/text/**', 'src/engine/gear/**'], rules: { 'max-lines': 'off' } },
  { files: ['src/**/*.{ts,tsx}'], ignores: ['src/cli/**'], rules: { 'no-console': 'error' } },
  {
    files: ['src/engine/**/*.ts'],
    rules: {
      'max-lines-per-function': ['error', { max: 80, skipBlankLines: true, skipComments: true }],
      'no-restricted-globals': ['error', 'Date', 'Intl', 'performance', 'crypto', ...outerWorld],
      'no-restricted-properties': ['error', ...engineProperties],
      'no-restricted-syntax': ['error', ...engineSyntax],
    },
  },
  { files: ['src/{files,text,reports,records}/**/*.ts'], rules: { 'no-restricted-globals': ['error', ...outerWorld] } },
  { files: ['src/app/**/*.{ts,tsx}'], rules: { 'no-restricted-globals': ['error', 'process', 'Buffer'] } },
  {
    // A promise that nobody waits for swallows its error: a save that failed would look like one that worked.
    files: ['src/{app,cli}/**/*.{ts,tsx}'],
    languageOptions: { parserOptions: { projectService: true } },
    rules: {
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': ['error', { checksVoidReturn: { attributes: false } }],
    },
  },
)
