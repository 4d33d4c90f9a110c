/**
 * `electrode-system`: mutual resistances of electrodes in one or two layers of soil, and the surface potential that their
 * currents raise (with its sign: a current into the soil raises it).
 */
import { complex, solveElectrodes, type Electrode } from '../../../engine'
import type { Inputs } from '../inputs'
import { model } from '../model'

export const electrodeSystemModel = model(
  'electrode-system',
  (inputs) => {
    const soil = readSoil(inputs)
    const electrodes = inputs.list('electrodes', readElectrode)
    const ids = electrodes.map(({ electrode }) => electrode.id)
    if (new Set(ids).size < ids.length) inputs.refuse('two electrodes have the same id')
    if (ids.length === 0) inputs.refuse('there is no electrode')
    const points = inputs.list('points', (point) => ({ x: point.number('xM'), y: point.number('yM') }), [])
    return { soil, electrodes, points }
  },
  ({ soil, electrodes, points }) => {
    const system = solveElectrodes(
      soil,
      electrodes.map(({ electrode }) => electrode),
    )
    const currents = electrodes.map(({ current }) => complex(current))
    return {
      mutualOhm: system.resistance,
      potentialV: points.map((point) => system.potentialAt(point, currents).re),
    }
  },
)

export function readSoil(inputs: Inputs) {
  const layers = inputs.object('soil').list('layers', (layer) => ({
    resistivity: layer.number('resistivityOhmM', { above: 0 }),
    ...(layer.has('thicknessM') ? { thickness: layer.number('thicknessM', { above: 0 }) } : {}),
  }))
  refuseLayers(inputs, layers)
  return { layers }
}

function refuseLayers(inputs: Inputs, layers: readonly { readonly thickness?: number }[]): void {
  if (layers.length < 1 || layers.length > 2) inputs.refuse(`soil has one or two layers, got ${layers.length}`)
  if (layers.length === 2 && layers[0]!.thickness === undefined)
    inputs.refuse('the upper of two layers needs thicknessM')
  if (layers.at(-1)?.thickness !== undefined)
    inputs.refuse('the lowest layer has no thicknessM: it goes all the way down')
}

export function readElectrode(inputs: Inputs): { electrode: Electrode; current: number } {
  const kind = inputs.oneOf('kind', ['rod', 'disc', 'encased', 'wire', 'joined'])
  const id = inputs.text('id')
  const current = inputs.number('currentA')
  if (kind === 'joined') return { electrode: { id, kind, parts: inputs.list('parts', readPart) }, current }
  if (kind !== 'encased') return { electrode: { id, ...readShape(inputs, kind) }, current }
  const encased = {
    ...readUpright(inputs),
    coreRadius: inputs.number('coreRadiusM', { above: 0 }),
    encasementResistivity: inputs.number('encasementOhmM', { above: 0 }),
  }
  return { electrode: { id, kind, ...encased }, current }
}

const parts = ['rod', 'disc', 'wire'] as const
type Part = Extract<Electrode, { kind: 'joined' }>['parts'][number]

function readPart(inputs: Inputs): Part {
  return readShape(inputs, inputs.oneOf('kind', parts))
}

function readShape(inputs: Inputs, kind: (typeof parts)[number]): Part {
  if (kind === 'rod') return { kind, ...readUpright(inputs) }
  if (kind === 'wire') {
    const points = inputs.list('points', (point) => ({
      ...readPlace(point),
      depth: point.number('depthM', { atLeast: 0 }),
    }))
    const isClosed = inputs.has('closed') && inputs.oneOf('closed', ['yes', 'no']) === 'yes'
    return { kind, points, isClosed, radius: inputs.number('radiusM', { above: 0 }) }
  }
  if (inputs.has('topM') && inputs.number('topM') !== 0) inputs.refuse('a disc has depthM, no topM')
  const depth = inputs.number('depthM', { atLeast: 0 }, 0)
  return { kind, at: readPlace(inputs), radius: inputs.number('radiusM', { above: 0 }), depth }
}

function readUpright(inputs: Inputs) {
  return {
    at: readPlace(inputs),
    top: inputs.number('topM', { atLeast: 0 }, 0),
    length: inputs.number('lengthM', { above: 0 }),
    radius: inputs.number('radiusM', { above: 0 }),
  }
}

function readPlace(inputs: Inputs) {
  return { x: inputs.number('xM'), y: inputs.number('yM') }
}
