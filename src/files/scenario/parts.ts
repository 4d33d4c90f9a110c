/** The parts of `earths-on/scenario`: keys, units and ranges. Ranges say what is physically sensible, not what is usual. */
import * as v from 'valibot'
import { percentiles, skins } from '../../engine'
import {
  amperes,
  boolean,
  byKind,
  choice,
  date,
  id,
  kilograms,
  list,
  metres,
  metresPerSecond,
  number,
  numberChoice,
  ohmMetres,
  ohms,
  oneOf,
  optional,
  point,
  seconds,
  shape,
  squareMetres,
  squareMillimetres,
  text,
  volts,
  whole,
  type Field,
} from '../shape'
import { phase } from './commonParts'
import { rope } from './placeParts'
import { fuses } from './protectionParts'

export const weatherChange = shape({
  at: seconds(1, 100_000),
  wind: optional(metresPerSecond(0, 60)),
  rain: optional(boolean()),
  thunder: optional(boolean()),
})

export const weather = shape({ wind: metresPerSecond(0, 60), rain: boolean(), thunder: boolean() })

export const soil = shape({
  layers: list(shape({ resistivity: ohmMetres(1, 100_000), thickness: optional(metres(0.05, 100)) }), 1, 2),
})

export const section = shape({ length: metres(10, 100_000), crossingAlong: metres(-50_000, 50_000) })

export const stay = shape({
  anchor: point(),
  anchorDepth: metres(0, 5),
  anchorLength: metres(0.1, 5),
  anchorRadius: metres(0.002, 0.5),
  insulatorLeakage: ohms(0.1, 1e12),
  fixing: ohms(0.001, 1e9),
})

export const scenarioSwitch = shape({
  id: id(),
  label: text(40),
  feeder: id(),
  closed: boolean(),
  remote: boolean(),
  along: metres(-50_000, 50_000),
  hungBlades: list(phase(), 0, 3),
  fuses: optional(fuses),
  handleEarth: optional(ohms(0.01, 10_000)),
  handleEarthBroken: optional(boolean()),
  motorSupply: optional(boolean()),
})

type Start = { readonly switch: string } | { readonly x: number; readonly y: number }
const starts = { atSwitch: shape({ switch: id() }), atPoint: point() }
const startsAt = oneOf<Start>([starts.atSwitch, starts.atPoint], (input) =>
  typeof input === 'object' && input !== null && 'switch' in input ? starts.atSwitch : starts.atPoint,
)

export const person = shape({
  id: id(),
  role: choice('person-in-charge', 'pole-worker', 'ground-worker', 'switching-operator'),
  weight: { suffix: 'Kg', schema: numberChoice(50, 70) } satisfies Field<50 | 70>,
  bootSize: whole(30, 52),
  startsAt,
  arrivesAt: optional(seconds(1, 100_000)),
})

/** What can stand on a label. A name that the gear's type has as a parameter overrides it. */
export const label = v.pipe(
  shape({
    due: optional(date()),
    tested: optional(date()),
    serial: optional(text(20)),
    owner: optional(text(40)),
    class: optional(choice('00', '0', '1', '2', '3', '4')),
    size: optional(whole(5, 52)),
    area: optional(squareMillimetres(1, 500)),
    length: optional(metres(0.1, 200)),
    hop: optional(metres(0.1, 20)),
    diameter: optional(metres(0.002, 0.1)),
    mark: optional(metres(0.1, 5)),
    reach: optional(metres(0.3, 12)),
    jawTo: optional(metres(0.001, 0.1)),
    cuff: optional(metres(0.01, 0.5)),
    bandLow: optional(volts(10, 500_000)),
    bandHigh: optional(volts(10, 500_000)),
    maxVoltage: optional(volts(10, 10_000)),
    voltage: optional(volts(10, 500_000)),
    workingLoad: optional(kilograms(1, 5000)),
    rated: optional(amperes(1, 100_000)),
    shows: optional(choice('strength')),
    channel: optional(text(10)),
    edition: optional(text(20)),
    written: optional(text(80)),
  }),
  v.transform((value) => value as Readonly<Record<string, string | number>>),
) as v.GenericSchema<unknown, Readonly<Record<string, string | number>>>

export const item = shape({ id: id(), type: id(), label, defects: list(id(), 0, 10) })

export const hazard = shape({
  id: id(),
  real: boolean(),
  at: point(),
  looks: optional(
    choice(
      'road',
      'path',
      'fence',
      'gate',
      'building',
      'hut',
      'water',
      'trees',
      'animals',
      'sign',
      'post',
      'box',
      'stone',
      'heap',
      'bench',
      'block',
      'service-span',
    ),
  ),
})

const pair = v.strictTuple([phase(), phase()], 'a list of exactly 2 phases') as v.GenericSchema<
  unknown,
  readonly ['A' | 'B' | 'C', 'A' | 'B' | 'C']
>

export const livening = byKind({
  clash: shape({ id: id(), kind: choice('clash'), feeder: id(), phase: phase(), impedance: ohms(0.001, 10_000) }),
  'clash-two': shape({
    id: id(),
    kind: choice('clash-two'),
    feeder: id(),
    phases: pair,
    impedance: ohms(0.001, 10_000),
  }),
  'switch-closed': shape({ id: id(), kind: choice('switch-closed'), switch: id() }),
  'back-feed': shape({ id: id(), kind: choice('back-feed'), source: id() }),
  'low-voltage-fed': shape({ id: id(), kind: choice('low-voltage-fed'), source: id() }),
  'street-lamps-on': shape({ id: id(), kind: choice('street-lamps-on'), wire: id() }),
  'lead-on-low-voltage': shape({
    id: id(),
    kind: choice('lead-on-low-voltage'),
    wire: id(),
    impedance: ohms(0.001, 10_000),
  }),
  induction: shape({ id: id(), kind: choice('induction'), parallel: id(), phase: phase() }),
  'pick-up': shape({ id: id(), kind: choice('pick-up'), parallel: id(), phase: phase() }),
  'neutral-raised': shape({
    id: id(),
    kind: choice('neutral-raised'),
    feeder: id(),
    phase: phase(),
    impedance: ohms(0.001, 10_000),
  }),
  'blade-shut': shape({ id: id(), kind: choice('blade-shut'), switch: id(), phase: phase() }),
  'remote-close': shape({ id: id(), kind: choice('remote-close'), switch: id() }),
  'other-crew-closes': shape({ id: id(), kind: choice('other-crew-closes'), switch: id() }),
  'conductor-falls': shape({
    id: id(),
    kind: choice('conductor-falls'),
    feeder: id(),
    phase: phase(),
    onto: id(),
    at: choice('crossing', 'pole'),
    impedance: ohms(0.001, 10_000),
  }),
  'jumper-back': shape({
    id: id(),
    kind: choice('jumper-back'),
    feeder: id(),
    phase: phase(),
    impedance: ohms(0.001, 10_000),
    at: optional(id()),
  }),
  'conductor-down': shape({
    id: id(),
    kind: choice('conductor-down'),
    feeder: id(),
    phase: phase(),
    thing: id(),
    impedance: ohms(0.001, 100_000),
  }),
  'neighbour-fault': shape({
    id: id(),
    kind: choice('neighbour-fault'),
    feeder: id(),
    phase: phase(),
    thing: id(),
    impedance: ohms(0.001, 10_000),
  }),
  'boom-touches': shape({
    id: id(),
    kind: choice('boom-touches'),
    feeder: id(),
    phase: phase(),
    impedance: ohms(0.001, 10_000),
  }),
  'handle-live': shape({
    id: id(),
    kind: choice('handle-live'),
    switch: id(),
    phase: phase(),
    impedance: ohms(0.001, 10_000),
  }),
  lightning: shape({ id: id(), kind: choice('lightning') }),
  'stored-charge': shape({
    id: id(),
    kind: choice('stored-charge'),
    capacitance: { suffix: 'F', schema: number(1e-9, 0.1) },
    voltage: volts(50, 500_000),
    phases: list(phase(), 1, 3),
    discharge: optional(ohms(1, 1e9)),
  }),
  'coil-fed': shape({ id: id(), kind: choice('coil-fed'), switch: id(), phase: phase() }),
  'fuse-carrier': shape({ id: id(), kind: choice('fuse-carrier'), switch: id(), phase: phase() }),
})

export const body = shape({
  percentile: numberChoice(...percentiles),
  skin: choice(...skins),
})

export const range = shape({
  of: choice('soil', 'fixing', 'concrete', 'contact', 'moisture'),
  low: number(0.001, 1),
  high: number(1, 1000),
})

const layer = shape({
  thickness: metres(0.0001, 0.1),
  permittivity: number(1, 100),
  leakage: ohms(1, 1e12),
  wetLeakage: optional(ohms(1, 1e12)),
})

export const contact = shape({
  area: shape({
    thigh: squareMetres(0.0001, 1),
    hand: squareMetres(0.0001, 1),
    sole: squareMetres(0.0001, 1),
    bootOnBolt: squareMetres(0.0001, 1),
  }),
  footRadius: metres(0.01, 0.3),
  sole: layer,
  cover: layer,
  glove: layer,
  guard: layer,
  stickLeakage: ohms(1000, 1e13),
  wetStickLeakage: optional(ohms(1000, 1e13)),
  leather: ohms(0, 1e6),
  clampGood: ohms(1e-6, 1),
  rope: optional(rope),
})

export const control = shape({
  widensPermit: optional(boolean()),
  takesCrossingOut: boolean(),
  blocksReclose: boolean(),
  guardsCrossing: optional(boolean()),
  takesJumpersOut: optional(boolean()),
  misheard: optional(list(shape({ message: text(40), saidAs: text(40), corrects: optional(boolean()) }), 0, 20)),
  permit: optional(shape({ number: text(20), until: seconds(0, 172_800) })),
})
