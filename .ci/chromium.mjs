// Which browser do the tests drive? The one named by CHROMIUM_PATH, else the one that `npm ci` brought (Linux, x64),
// else one that is installed. None is an error: browser tests that quietly do not run would look like passed ones.
//
// The package's own unpacking is not used: it writes one unversioned folder that all users of the machine share, and two
// test workers race for it. Here each version has its own folder, which appears whole or not at all.

import {
  createReadStream,
  createWriteStream,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
} from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { pipeline } from 'node:stream/promises'
import { fileURLToPath } from 'node:url'
import { createBrotliDecompress } from 'node:zlib'

const cache = fileURLToPath(new URL('../node_modules/.cache', import.meta.url))

// Software rendering, so that 3D draws the same without a graphics card; and nothing that the browser does by itself.
const flags = [
  '--no-sandbox',
  '--no-first-run',
  '--disable-quic',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--use-gl=angle',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--ignore-gpu-blocklist',
  '--font-render-hinting=none',
  '--force-color-profile=srgb',
]

const installedBrowsers = [
  '/usr/bin/chromium',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:/Program Files/Google/Chrome/Application/chrome.exe',
  'C:/Program Files (x86)/Microsoft/Edge/Application/msedge.exe',
]

/**
 * @returns {Promise<{ executablePath: string, args: string[], env?: Record<string, string> }>} launch options for playwright
 * @throws when there is no browser
 */
export async function requireChromium() {
  if (process.env.CHROMIUM_PATH) return { executablePath: process.env.CHROMIUM_PATH, args: flags }
  if (process.platform === 'linux' && process.arch === 'x64') return packagedChromium()
  const executablePath = installedBrowsers.find((path) => existsSync(path))
  if (!executablePath) throw new Error('No browser for the tests: set CHROMIUM_PATH to a Chromium, Chrome or Edge')
  return { executablePath, args: flags }
}

async function packagedChromium() {
  const folder = await unpackChromium()
  // Without a real locale this build names its language `en-US@posix`, which Intl refuses.
  const env = { ...process.env, LANG: 'en_US.UTF-8' }
  if (!hasSystemLibrary('libnss3.so')) env.LD_LIBRARY_PATH = join(folder, 'al2023/lib')
  if (!existsSync('/usr/share/fonts')) env.FONTCONFIG_PATH = join(folder, 'fonts')
  return { executablePath: join(folder, 'chromium'), args: flags, env }
}

async function unpackChromium() {
  const packed = join(dirname(createRequire(import.meta.url).resolve('@sparticuz/chromium')), '../../bin')
  const { version } = JSON.parse(readFileSync(join(packed, '../package.json'), 'utf8'))
  const folder = join(cache, `chromium-${version}`)
  if (existsSync(folder)) return folder

  const { default: tar } = await import('tar-fs')
  mkdirSync(cache, { recursive: true })
  const unfinished = mkdtempSync(join(cache, 'chromium-unpacking-'))
  const unpack = (name, target) =>
    pipeline(createReadStream(join(packed, name)), createBrotliDecompress({ chunkSize: 2 ** 21 }), target)
  await Promise.all([
    unpack('chromium.br', createWriteStream(join(unfinished, 'chromium'), { mode: 0o755 })),
    unpack('swiftshader.tar.br', tar.extract(unfinished)),
    unpack('fonts.tar.br', tar.extract(join(unfinished, 'fonts'))),
    unpack('al2023.tar.br', tar.extract(join(unfinished, 'al2023'))),
  ])
  try {
    renameSync(unfinished, folder)
  } catch (error) {
    rmSync(unfinished, { recursive: true, force: true })
    // Another process may have finished first; then its folder is as good as ours.
    if (!existsSync(folder)) throw error
  }
  return folder
}

function hasSystemLibrary(name) {
  return ['/lib/x86_64-linux-gnu', '/usr/lib/x86_64-linux-gnu', '/usr/lib64', '/lib64'].some((folder) =>
    existsSync(join(folder, name)),
  )
}
