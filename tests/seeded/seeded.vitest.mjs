// One seeded defect: the source is changed as it is read, nothing on the disk.
import { readFileSync } from 'node:fs'
import { defineConfig } from 'vitest/config'

const { defect } = process.env
const seeded = defect === undefined ? undefined : JSON.parse(defect)

export default defineConfig({
  plugins: [
    {
      name: 'seeded-defect',
      enforce: 'pre',
      load(id) {
        if (seeded === undefined || !id.split('?')[0].endsWith(`/${seeded.file}`)) return undefined
        return readFileSync(id.split('?')[0], 'utf8').replace(seeded.find, () => seeded.replace)
      },
    },
  ],
  test: {
    environment: 'node',
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/support/failOnConsole.ts', 'tests/support/sameDraws.ts'],
  },
})
