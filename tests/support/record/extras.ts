/** What a crew can do beyond what its rules ask: measured, tested, asked and laid down, each act where it belongs. */
import type { Conduct } from '../../../src/engine'
import { walkTo } from '../../../src/engine/demonstration/ask'
import { instead, together, type Job } from './deviations'
import { before } from './shortcuts'

/** Signed out by the ground worker, looked at, passed and taken in the hand. */
function taken(job: Job, ...items: readonly string[]): void {
  const { gw } = job.crew
  for (const on of items) {
    job.order(gw, 'book-out', { on })
    job.order(gw, 'look', { on })
    job.order(gw, 'judge', { on, values: { verdict: 'pass' } })
    job.order(gw, 'take', { on })
  }
}

/** The earth of the rod is measured before the lead goes on it; the observer holds everybody back; a reading is explained. */
export const measured = (tester: string): Conduct =>
  together(
    before('clamp-earth-end', (job) => {
      const { gw } = job.crew
      walkTo(job, gw, job.belief().truck)
      taken(job, tester)
      walkTo(job, gw, job.layout.rod)
      job.order(gw, 'measure-earth', {
        with: tester,
        on: `rod/${job.kit.get('rod')}`,
        values: { against: 'far-earth' },
      })
      job.order(gw, 'put-down', { on: tester })
    }),
    before('say-dead', (job) => explained(job)),
    before('call-control', (job) => job.order(job.crew.pic, 'hold-back', { values: { whom: job.crew.gw } })),
  )

/** Asked how it stands, wire against wire tested, a clamp found loose and screwed on, a platform laid where one stands. */
export const moreThanAsked = (platform: string): Conduct =>
  together(
    before('take-permit', (job) =>
      job.order(job.crew.pic, 'ask-how-it-stands', { on: job.scenario.switches[0]!.feeder }),
    ),
    before('set-signs', (job) => {
      const { gw } = job.crew
      taken(job, platform)
      job.order(gw, 'lay-platform', { with: platform })
      job.order(gw, 'take-up-platform', { on: platform })
      job.order(gw, 'put-down', { on: platform })
    }),
    before('fit-guard', (job) => {
      const [wire, other] = job.scenario.lv.wires
      job.order(job.crew.pw, 'test-pair', {
        with: job.kit.get('lv-tester')!,
        on: wire!.id,
        values: { against: other!.id },
      })
    }),
    instead(
      (intent, job) => intent.do === 'clamp' && intent.on === job.scenario.work.conductor,
      (intent) => [{ ...intent, values: { turns: 2 } }],
    ),
    before('declare-safe', (job) => job.order(job.crew.pic, 'measure-to-earths', { on: 'pole' })),
    before('close-job', (job) => job.order(job.crew.pic, 'send-away', { values: { whom: job.crew.gw } })),
  )

/** The handle's earth is followed down, and the open switch tested by the ground worker, who forgets the detector there. */
export const carefulAtSwitch = (device: string, detector: string, stick: string): Conduct =>
  together(
    before('open-switch', (job) => job.order(job.crew.so, 'check-handle-earth', { on: device })),
    before('report-isolated', (job) => {
      const { gw } = job.crew
      taken(job, detector, stick)
      job.order(gw, 'walk', { on: device })
      job.order(gw, 'test-at-switch', { with: detector, on: `${device}/A` })
      job.order(gw, 'put-down', { on: detector })
      job.order(gw, 'walk', { on: 'truck' })
      job.order(gw, 'fetch', { on: detector })
      for (const on of [detector, stick]) job.order(gw, 'put-down', { on })
      job.wait()
    }),
  )

/** The control room says the step, it is read back, and told when it is done: each a message of its own. */
export const stepsApart = (device: string): Conduct =>
  together(
    before('receive-step', (job) => job.order(job.crew.so, 'hear-step', { on: device })),
    before('step-off-mat', (job) => {
      const { label } = job.scenario.switches.find(({ id }) => id === device)!
      job.order(job.crew.so, 'report-step', { on: device, values: { message: label } })
    }),
  )

/** The step heard first and told back after; a tag with a name alone, a reading taken for induced; with an earth set named, that on the open switch before the permit. */
export const otherWays = (device: string, tag: string, earth?: string): Conduct =>
  together(
    instead(
      (intent) => intent.do === 'write-tag' && intent.on === tag,
      (intent) => [{ ...intent, values: { wording: 'name-only' } }],
    ),
    stepsApart(device),
    ...(earth === undefined ? [] : [before('report-isolated', (job) => earthAt(job, device, earth))]),
    before('say-dead', (job) => explained(job)),
  )

function earthAt(job: Job, device: string, earth: string): void {
  const { so } = job.crew
  const mat = job.kit.get('operator-mat')!
  job.order(so, 'put-down', { on: mat })
  job.order(so, 'take', { on: earth })
  job.order(so, 'walk', { on: device })
  job.order(so, 'earth-isolation-point', { on: device, with: earth })
  job.order(so, 'walk', { on: 'truck' })
  job.order(so, 'take', { on: mat })
}

const explained = ({ order, crew, scenario }: Job): void =>
  order(crew.pw, 'judge-indication', { on: scenario.work.conductor, values: { takenFor: 'induced' } })

/** The work at the next pole is left for another day. */
export const nextPoleDeclined = (): Conduct =>
  before('confirm-complete', (job) => job.order(job.crew.pic, 'decline-next-pole', { on: 'next-pole' }))
