/**
 * What the job needs from the truck, asked of the site and of the pack: so many of a type, for whom, and fit for what is to
 * be done with it. In the order in which it is signed out.
 */
import { isEarthLead } from '../gear/earthLeads'
import type { ItemId, PersonId } from '../site/scenario'
import { leadArea } from './copper'
import { isBondFit, isCoverFit, isDetectorFit, isLeadFit, isStickFit, printedNumber } from './fits'
import type { Job } from './job'
import { baggedBelow, belowOf, keysOf } from './lowVoltage'
import { hasLvBonds } from './lvBonds'
import type { Need, Printed } from './need'
import { guardedWires, isCovering, isEarthedByNeutral, switchesOf } from './things'

const isType =
  (wanted: string) =>
  (type: string): boolean =>
    type === wanted

const need = (who: PersonId, name: string, type = name): Need => ({ name, isType: isType(type), who })

export function needsOf(job: Job): readonly Need[] {
  return [...poleWorkersNeeds(job), ...groundWorkersNeeds(job), ...chargesNeeds(job), ...operatorsNeeds(job)]
}

export function requireNeed(job: Job, name: string): Need {
  const found = needsOf(job).find((it) => it.name === name)
  if (!found) throw new RangeError(`no need ${name}`)
  return found
}

const isWithoutBolts = (job: Job): boolean => job.belief().sheet.pole.stepBoltsTo === 0

function poleWorkersNeeds(job: Job): readonly Need[] {
  const { crew, practice, scenario } = job
  const any = (name: string, type = name): Need => need(crew.pw, name, type)
  const next = scenario.nextPole?.work
  const hasWires = scenario.lv.wires.length > 0
  const isGuardFit = (it: Printed): boolean => printedNumber(it, 'class') >= practice.guardClass
  const part = scenario.items.find(({ id }) => id === scenario.work.item)?.type ?? ''
  return [
    { ...any('lead'), isType: isEarthLead, suits: (it) => isLeadFit(job, it) },
    { ...any('bond', 'bond-lead'), suits: (it) => isBondFit(job, it) },
    { ...any('stick', 'operating-stick'), suits: (it) => isStickFit(job, it) },
    any('brush', 'stick-brush'),
    { ...any('detector', 'hv-detector'), suits: (it) => isDetectorFit(job, it) },
    any('hv-proving-unit'),
    ...(hasWires ? [any('lv-tester'), any('lv-proving-unit')] : []),
    ...(hasLvBonds(job) ? [any('lv-bonds', 'lv-bond-set')] : []),
    any('rubber-gloves', 'lv-gloves'),
    any('leather-gloves', 'work-gloves'),
    ...(isCovering(job) ? [{ ...any('cover', 'pole-cover'), suits: (it: Printed) => isCoverFit(job, it) }] : []),
    ...guardedWires(job).map((_, i) => ({ ...any(`guard-${i}`, 'lv-guard'), suits: isGuardFit })),
    any('harness'),
    ...(isWithoutBolts(job) ? [any('irons', 'climbing-irons')] : []),
    any('handline'),
    { ...any('part', part), suits: (_, id) => id === scenario.work.item },
    ...(next ? [{ ...any('next-part', part), suits: (_: Printed, id: ItemId) => id === next.item }] : []),
    boots(job, crew.pw),
  ]
}

function groundWorkersNeeds(job: Job): readonly Need[] {
  const { crew, practice } = job
  const any = (name: string, type = name): Need => need(crew.gw, name, type)
  const isRodFit = (it: Printed): boolean => printedNumber(it, 'length') >= practice.rodDepth + 0.1
  return [
    ...(isEarthedByNeutral(job) ? [] : [{ ...any('rod', 'earth-rod'), suits: isRodFit }, any('rod-driver')]),
    // Rubber for a neutral that a fault elsewhere can raise, or for the truck's lead; leather for a rod.
    any('ground-gloves', isEarthedByNeutral(job) || job.layout.isBoomNear ? 'lv-gloves' : 'work-gloves'),
    any('barrier-set'),
    any('sign-set'),
    any('rescue-kit'),
    ...boomNeeds(job),
    boots(job, crew.gw),
  ]
}

/** Without them the pole is climbed. */
function boomNeeds(job: Job): readonly Need[] {
  if (!job.layout.isBoomNear) return []
  const any = (name: string, type: string): Need => ({ ...need(job.crew.gw, name, type), isOptional: true })
  return [any('boom', 'bucket-boom'), any('truck-bond', 'truck-bond-lead')]
}

const chargesNeeds = (job: Job): readonly Need[] => [need(job.crew.pic, 'binoculars'), boots(job, job.crew.pic)]

/** A lock and a tag for every switch, and earths for those that feed the section where the pack wants them there. */
function operatorsNeeds(job: Job): readonly Need[] {
  const { crew, practice, scenario } = job
  const switches = switchesOf(job)
  const earthed = practice.hasMainEarths ? switches.filter(({ closed }) => closed) : []
  return [
    ...switches.map((_, i) => lockOf(job, `lock-${i}`)),
    ...switches.map((_, i) => tagOf(job, `tag-${i}`)),
    need(crew.so, 'operator-mat'),
    need(crew.so, 'switching-gloves'),
    ...(scenario.dark ? [need(crew.so, 'lamp')] : []),
    ...earthed.map((_, i) => ({
      ...need(crew.so, `isolation-earth-${i}`, 'isolation-earth'),
      suits: (it: Printed) => printedNumber(it, 'area') >= leadArea(job),
    })),
    ...lowVoltageNeeds(job),
  ]
}

/**
 * For each main switch below the line a lock and a tag, and its cabinet's key; for each cut-out a tag and a bag. As they are
 * taken.
 */
function lowVoltageNeeds(job: Job): readonly Need[] {
  const { so } = job.crew
  const orNot = (it: Need): Need => ({ ...it, isOptional: true })
  const locked = (id: string): readonly Need[] => [orNot(lockOf(job, `lock-${id}`)), orNot(tagOf(job, `tag-${id}`))]
  const { owners, cabinets, transformers } = belowOf(job)
  return [
    ...owners.flatMap(locked),
    ...keysOf(job).map((key) => ({
      ...need(so, `key-${key}`, 'cabinet-key'),
      suits: (_: Printed, id: ItemId) => id === key,
    })),
    ...cabinets.flatMap(locked),
    ...transformers.map((id) => orNot(tagOf(job, `tag-${id}`))),
    ...baggedBelow(job).map((id) => orNot(need(so, `bag-${id}`, 'carrier-bag'))),
  ]
}

/** Their own lock rather than another crew's. */
function lockOf({ crew, scenario }: Job, name: string): Need {
  const own = words(scenario.crew.find(({ id }) => id === crew.so)?.role)
  return { ...need(crew.so, name, 'lock'), rank: (it) => (it['owner'] === undefined || it['owner'] === own ? 0 : 1) }
}

/** One that says whose it is rather than a blank one. */
const tagOf = ({ crew }: Job, name: string): Need => ({
  ...need(crew.so, name, 'tag'),
  rank: (it) => (it['written'] === 'nothing' ? 1 : 0),
})

/** Feet get into boots one size off. The own pair rather than a spare one, and nobody else's who needs theirs. */
const sizesOff = 1

function boots(job: Job, who: PersonId): Need {
  const member = job.scenario.crew.find(({ id }) => id === who)
  const own = words(member?.role)
  const others = job.scenario.crew
    .filter(({ id, role }) => id !== who && role !== 'switching-operator')
    .map(({ role }) => words(role))
  return {
    ...need(who, `boots-${who}`, 'boots'),
    suits: (it) =>
      printedNumber(it, 'class') >= job.practice.bootClass &&
      (typeof it['size'] !== 'number' || Math.abs(it['size'] - (member?.bootSize ?? 0)) <= sizesOff) &&
      !others.includes(String(it['owner'])),
    rank: (it) => (it['owner'] === own ? 0 : it['owner'] === words('switching-operator') ? 2 : 1),
  }
}

const words = (role: string | undefined): string => (role ?? '').replaceAll('-', ' ')
