// Makes a clone ready to run: installs when the lock file asks for other packages than are there, writes the engine
// digest, and with --build builds the app when a source changed. What is up to date is skipped.
// Node built-ins only: this runs before node_modules exists. It speaks on standard error, because the standard output
// of the command that follows may be read by a program.

import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { writeEngineDigest } from './digest.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
const buildStamp = join(root, 'node_modules/.cache/earths-on/build')
const buildSources = [
  'package-lock.json',
  'tsconfig.json',
  'vite.config.ts',
  '.ci',
  'index.html',
  'src',
  'scenarios',
  'public',
]

/**
 * Packages and generated sources.
 * @returns {string} what was done, for a report
 */
export function ensureReady() {
  const done = ensureInstalled()
  writeEngineDigest(root)
  return done
}

function ensureInstalled() {
  requireNode(20, 19)
  if (installedPackagesMatchLock()) return 'up to date'
  console.error('Installing packages (npm ci)')
  // npm leaves the development packages out under NODE_ENV=production, but the local server is one of them.
  // No package needs a script of its own to be installed, so none gets to run one.
  run('npm', ['ci', '--include=dev', '--ignore-scripts', '--no-audit', '--no-fund'])
  return 'installed'
}

/** @returns {string} what was done, for a report */
export function ensureBuilt() {
  writeEngineDigest(root)
  const sources = hashSources()
  const isCurrent = existsSync(buildStamp) && readFileSync(buildStamp, 'utf8') === sources
  if (isCurrent && existsSync(join(root, 'dist/index.html'))) return 'up to date'
  console.error('Building the app (vite build)')
  // A test runner's own NODE_ENV would put the libraries' development editions into the build.
  run('node', ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'warn'], { NODE_ENV: 'production' })
  mkdirSync(dirname(buildStamp), { recursive: true })
  writeFileSync(buildStamp, sources)
  return 'built'
}

/** npm notes in node_modules/.package-lock.json what it installed; packages for other machines are left out there. */
function installedPackagesMatchLock() {
  const wanted = readPackages('package-lock.json')
  const installed = readPackages('node_modules/.package-lock.json')
  if (!wanted || !installed) return false
  const hasUnwanted = Object.keys(installed).some((path) => !(path in wanted))
  const hasAll = Object.entries(wanted).every(
    ([path, { integrity, optional }]) =>
      path === '' || (path in installed ? installed[path].integrity === integrity : optional === true),
  )
  return hasAll && !hasUnwanted
}

function readPackages(file) {
  const path = join(root, file)
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')).packages : undefined
}

function hashSources() {
  const hash = createHash('sha256')
  for (const path of buildSources.flatMap((source) => filesUnder(join(root, source)))) {
    hash.update(`${path.slice(root.length)}\n`).update(readFileSync(path))
  }
  return hash.digest('hex')
}

function filesUnder(path) {
  if (!existsSync(path)) return []
  if (statSync(path).isFile()) return [path]
  return readdirSync(path, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath ?? entry.path, entry.name))
    .sort()
}

function requireNode(major, minor) {
  const [haveMajor, haveMinor] = process.versions.node.split('.').map(Number)
  if (haveMajor > major || (haveMajor === major && haveMinor >= minor)) return
  console.error(`Node ${major}.${minor} or newer is needed; this is ${process.versions.node}`)
  process.exit(2)
}

function run(command, parameters, environment = {}) {
  // npm is a script on Windows, which only a shell starts. Its standard output goes where ours speaks.
  const { status } = spawnSync(command, parameters, {
    cwd: root,
    env: { ...process.env, ...environment },
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32',
  })
  if (status !== 0) throw new Error(`${command} ${parameters.join(' ')} failed`)
}

if (process.argv[1] && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  try {
    ensureReady()
    if (process.argv.includes('--build')) ensureBuilt()
  } catch (error) {
    console.error(error.message)
    process.exit(1)
  }
}
