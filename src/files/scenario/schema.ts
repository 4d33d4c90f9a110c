/** `earths-on/scenario`, version 1: a place and a task with its hidden truth, as a file. */
import * as v from 'valibot'
import { triggers, type ScenarioBase } from '../../engine'
import {
  boolean,
  choice,
  date,
  hertz,
  id,
  list,
  metres,
  nullable,
  numberChoice,
  optional,
  seconds,
  shape,
  whole,
} from '../shape'
import { conductors, feeder, parallel } from './networkParts'
import * as lowVoltage from './lowVoltageParts'
import * as part from './parts'
import * as place from './placeParts'

export const scenarioFormat = 'earths-on/scenario'
export const scenarioVersion = 1

/** Conditions of the chain at which the visible livening can strike. */
const trigger = choice(...triggers.keys())

const fault = shape({ item: id(), defect: id(), label: optional(part.label) })

const draws = shape({
  defects: list(fault, 0, 200),
  most: whole(0, 10),
  fallback: seconds(1, 100_000),
  quietOneIn: whole(1, 100),
  fixed: list(
    shape({
      seed: whole(0, 4_294_967_295),
      purpose: choice('practise', 'assess'),
      defects: list(shape({ item: id(), defect: id() }), 0, 10),
      visible: nullable(shape({ trigger, livening: id() })),
      hungBlades: optional(list(shape({ switch: id(), phase: choice('A', 'B', 'C') }), 0, 60)),
    }),
    0,
    50,
  ),
})

const file = shape({
  format: choice(scenarioFormat),
  version: numberChoice(scenarioVersion),
  id: id(),
  frequency: hertz(1, 1000),
  startsAt: seconds(0, 86_399),
  date: date(),
  weather: part.weather,
  weatherChanges: optional(list(part.weatherChange, 0, 20)),
  dark: optional(shape({ from: seconds(0, 86_400), to: seconds(0, 86_400) })),
  soil: part.soil,
  pole: place.pole,
  metalwork: optional(list(place.metalwork, 0, 30)),
  grounds: optional(list(place.groundThing, 0, 10)),
  truck: optional(place.truck),
  livestock: optional(place.livestock),
  conductors,
  nextPole: optional(place.nextPole),
  jumpers: optional(list(id(), 0, 4)),
  sectionJumpers: optional(list(place.sectionJumpers, 0, 4)),
  section: part.section,
  feeders: list(feeder, 1, 10),
  parallels: optional(list(parallel, 0, 10)),
  lv: optional(lowVoltage.lv),
  transformers: optional(list(lowVoltage.transformer, 0, 20)),
  embedded: optional(list(lowVoltage.embeddedSource, 0, 20)),
  premises: optional(list(lowVoltage.premises, 0, 40)),
  stay: optional(part.stay),
  switches: list(part.scenarioSwitch, 1, 20),
  crew: list(part.person, 1, 12),
  items: list(part.item, 1, 300),
  hazards: list(part.hazard, 0, 50),
  publicApproach: metres(0.1, 50),
  livenings: list(part.livening, 0, 50),
  triggers: list(shape({ trigger, livenings: list(id(), 1, 50) }), 0, 50),
  whileAway: optional(shape({ loosens: optional(id()), takesBarrier: optional(boolean()) })),
  casualties: optional(boolean()),
  horizon: seconds(1, 3600),
  body: part.body,
  ranges: list(part.range, 0, 5),
  work: shape({ conductor: id(), old: id(), item: id(), takes: seconds(1, 36_000) }),
  control: part.control,
  contact: part.contact,
  draws,
})

export const scenarioSchema: v.GenericSchema<unknown, ScenarioBase> = v.pipe(
  file,
  v.transform(
    ({ format: _format, version: _version, triggers, lv = lowVoltage.noLowVoltage, ...rest }): ScenarioBase => ({
      ...rest,
      lv,
      triggers: triggers.flatMap(({ trigger, livenings }) => livenings.map((livening) => ({ trigger, livening }))),
    }),
  ),
) as v.GenericSchema<unknown, ScenarioBase>
