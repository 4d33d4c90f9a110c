/** The site list: everything that can be pointed at, as an ordered tree, with what the crew knows of each. */
import type { Belief, ConductorBelief, Evidence, ItemBelief } from '../../../engine'
import { type Speaker, plain, say, timeOfDay } from '../../../text'
import { groupOf, membersOf } from '../../stores/groups'

export interface TreeNode {
  /** Unique in the tree; a thing may hang in two places. */
  readonly key: string
  readonly level: number
  readonly name: string
  readonly status: string
  /** What orders name; null: acts on nothing in particular; undefined: only a heading. */
  readonly thing: string | null | undefined
  readonly children: readonly TreeNode[]
}

export function siteTree(belief: Belief, chosen: readonly string[], speaker: Speaker): readonly TreeNode[] {
  const build = makeBuilder(belief, speaker)
  return [
    build.crew(),
    ...inFront(chosen, belief).flatMap((id) => build.carried(id)),
    build.pole(),
    build.aloft(),
    build.ground(),
    build.network(),
    build.out(),
    build.boots(),
    build.store('fitted'),
    build.store('tarp'),
    build.store('left'),
    build.store('truck'),
    build.store('quarantine'),
  ].filter((node) => node !== null)
}

/** The chosen people first, then the others. */
function inFront(chosen: readonly string[], belief: Belief): readonly string[] {
  return [...chosen, ...belief.persons.map((person) => person.id).filter((id) => !chosen.includes(id))]
}

/** Nodes as they are shown, folded ones closed. */
export function visibleNodes(nodes: readonly TreeNode[], folded: readonly string[]): readonly TreeNode[] {
  return nodes.flatMap((node) => [node, ...(folded.includes(node.key) ? [] : visibleNodes(node.children, folded))])
}

function makeBuilder(belief: Belief, speaker: Speaker) {
  const { sheet } = belief
  const clock = (second: number) => timeOfDay(sheet.startsAt + second)
  const node = (
    level: number,
    key: string,
    name: string,
    status: string,
    thing: string | null | undefined,
    children: readonly TreeNode[] = [],
  ): TreeNode => ({ key, level, name, status, thing, children })
  const named = (level: number, thing: string, status: string, children: readonly TreeNode[] = []) =>
    node(level, thing, speaker.say(`thing.${thing}`), status, thing, children)
  const item = (level: number, { id, type, verdict }: ItemBelief, prefix: string) =>
    node(
      level,
      `${prefix}/${id}`,
      `${id} ${speaker.say(`gear.${type}`)}`,
      verdict ? speaker.say(`verdict.${verdict}`) : '',
      id,
    )

  const told = (evidence: Evidence | null) =>
    evidence ? `${speaker.say(evidence.says, evidence.values)} ${clock(evidence.at).slice(0, 5)}` : ''

  const toldOf = (evidence: Evidence | null) =>
    evidence ? speaker.say(evidence.says, { ...evidence.values, of: evidence.of }) : ''

  /** As they were put there. */
  const clampsOn = (id: string): string =>
    belief.clamps
      .filter((clamp) => clamp.on === id)
      .map((clamp) => `${clamp.lead} ${speaker.say(`end.${clamp.end}`)}`)
      .join(', ')

  const mainStatus = (main: Belief['mains'][number] | null): string =>
    main
      ? [
          toldOf(main.last),
          main.lock && say('state.locked', { item: main.lock }),
          main.tag && say('state.tagged', { item: main.tag }),
          main.bag && say('state.bagged', { item: main.bag }),
        ]
          .filter(Boolean)
          .join(', ')
      : ''

  const conductor = (it: ConductorBelief) => {
    const clamps = clampsOn(it.id)
    const status = clamps !== '' ? clamps : it.lastTest ? told(it.lastTest) : say('state.treatAsLive')
    return named(3, it.id, it.isBrushed ? `${status}, ${say('state.brushed')}` : status)
  }

  /** Who is in charge is asked only where there is more than one who can be. */
  const crew = () => {
    const able = belief.persons.filter(({ role }) => role === 'person-in-charge')
    const charge = able.length > 1 ? [named(2, 'charge', speaker.say(`person.${belief.inCharge}`))] : []
    return node(1, 'crew', say('tree.crew'), speaker.say(`permit.${belief.paper.permit}`), null, charge)
  }

  const carried = (id: string): TreeNode[] => {
    const person = belief.persons.find((it) => it.id === id)
    if (!person) return []
    const items = [...person.holds, ...person.wears].flatMap((each) => belief.items.filter((it) => it.id === each))
    if (items.length === 0) return []
    return [
      node(
        1,
        `with/${id}`,
        speaker.say('tree.with', { who: id }),
        String(items.length),
        undefined,
        items.map((it) => item(2, it, `with/${id}`)),
      ),
    ]
  }

  const all = (level: number, name: string, title: string, status: string, children: readonly TreeNode[] = []) =>
    node(level, groupOf(name), title, status, groupOf(name), children)

  const pole = () => {
    const bonds = belief.clamps.filter((clamp) => clamp.on === 'arm').map((clamp) => clamp.lead)
    return named(1, 'pole', speaker.say(`pole.${sheet.pole.kind}`), [
      named(2, 'pole-foot', ''),
      all(2, 'conductors', say('all.conductors'), '', belief.conductors.map(conductor)),
      ...(sheet.place.nextPole ? [nextPole(sheet.place.nextPole.number)] : []),
      ...belief.jumpers.map(({ id, isOpen, lastTest }) =>
        named(
          2,
          id,
          [say(isOpen ? 'state.jumperOpen' : 'state.jumperClosed'), told(lastTest)].filter(Boolean).join(', '),
        ),
      ),
      named(2, 'arm', bonds.join(', ')),
      ...sheet.place.metalwork.map(({ id }) => named(2, id, leadsOn(id))),
      ...sheet.feeders.flatMap(({ neutralWire: wire }, i, all) =>
        wire && all.findIndex((it) => it.neutralWire?.id === wire.id) === i
          ? [named(2, wire.id, leadsOn(wire.id))]
          : [],
      ),
      ...(sheet.lv.wires.length === 0
        ? []
        : [
            all(
              2,
              'lv',
              say('all.lv'),
              say('state.treatAsLive'),
              membersOf(belief, groupOf('lv'))
                .flatMap((id) => belief.wires.filter((it) => it.id === id))
                .map((wire) =>
                  named(
                    3,
                    wire.id,
                    [
                      wire.guard
                        ? say('state.guarded', { item: wire.guard })
                        : told(wire.lastTest) || say('state.treatAsLive'),
                      clampsOn(wire.id),
                      mainStatus(wire.main),
                    ]
                      .filter(Boolean)
                      .join(', '),
                  ),
                ),
            ),
          ]),
      named(
        2,
        'cover',
        belief.cover
          ? say('state.cover', { item: belief.cover.item, from: belief.cover.from, to: belief.cover.to })
          : say('state.none'),
      ),
      ...(sheet.stay ? [named(2, 'stay', '')] : []),
      named(2, 'pole-top', ''),
    ])
  }

  const nextPole = (number: string) =>
    named(2, 'next-pole', number, [
      ...belief.nextConductors.map(({ id, lastTest }) =>
        named(3, id, leadsOn(id) || told(lastTest) || say('state.treatAsLive')),
      ),
      named(3, 'arm@next', leadsOn('arm@next')),
    ])

  const aloft = () => {
    const hanging = membersOf(belief, groupOf('aloft')).flatMap((id) => belief.items.filter((it) => it.id === id))
    const items = [...hanging, ...belief.items.filter((it) => it.where.kind === 'handline')]
    return items.length === 0
      ? null
      : all(
          1,
          'aloft',
          say('tree.aloft'),
          String(items.length),
          items.map((it) => item(2, it, 'aloft')),
        )
  }

  const rodStatus = (id: string) => {
    const rod = belief.rods.find((each) => each.item === id)
    if (!rod) return say('state.notIn')
    const leads = belief.clamps.filter((clamp) => clamp.on === `rod/${id}`).map((clamp) => clamp.lead)
    return [say('state.rod', { depth: rod.depth }), ...leads].join(', ')
  }

  const leadsOn = (thing: string) =>
    belief.clamps
      .filter((clamp) => clamp.on === thing)
      .map((clamp) => clamp.lead)
      .join(', ')

  const truckStatus = () => {
    if (belief.truckState?.outriggers === 'down') return say('state.outriggersDown')
    return belief.marks['truck-parked'] === undefined ? '' : say('state.parked')
  }

  const bucketStatus = () => {
    const up = belief.truckState?.bucket
    return up ? say('state.bucketUp', { height: up.height }) : say('state.bucketHome')
  }

  const ground = () =>
    named(1, 'ground', belief.barrier ? say('state.barrier') : say('state.noBarrier'), [
      ...belief.items.filter((it) => it.type === 'earth-rod').map((it) => named(2, `rod/${it.id}`, rodStatus(it.id))),
      named(
        2,
        'barrier',
        belief.barrier ? say('state.corners', { corners: belief.barrier.length }) : say('state.none'),
      ),
      named(2, 'clear', ''),
      ...(sheet.place.earthTerminal === null ? [] : [named(2, 'terminal', leadsOn('terminal'))]),
      ...(sheet.feeders.some((it) => it.neutralWire) ? [named(2, 'pole-earth', leadsOn('pole-earth'))] : []),
      named(2, 'truck', [truckStatus(), leadsOn('truck')].filter(Boolean).join(', ')),
      ...(sheet.place.truck?.hasBoom ? [named(2, 'bucket', bucketStatus())] : []),
    ])

  const network = () =>
    node(1, 'network', say('tree.network'), '', undefined, [
      ...belief.switches.map((it) =>
        named(
          2,
          it.id,
          [
            speaker.say(`handle.${it.handle}`),
            it.lock && say('state.locked', { item: it.lock }),
            it.tag && say('state.tagged', { item: it.tag }),
          ]
            .filter(Boolean)
            .join(', '),
          [
            all(3, it.id, say('all.blades'), ''),
            ...sheet.conductors.map(({ phase }) =>
              node(3, `${it.id}/${phase}`, say('tree.blade', { phase }), told(it.blades[phase]), `${it.id}/${phase}`),
            ),
          ],
        ),
      ),
      ...belief.mains.map((it) => named(2, it.id, mainStatus(it))),
      ...(sheet.crossing ? [named(2, 'crossing', '')] : []),
      ...sheet.place.sectionJumpers.map(({ id }) =>
        named(2, id, told(belief.evidence.findLast((it) => it.of === id) ?? null)),
      ),
      all(
        2,
        'feeders',
        say('all.feeders'),
        '',
        sheet.feeders.map((feeder) =>
          named(
            3,
            feeder.id,
            belief.feedersOut.includes(feeder.id)
              ? say('state.out')
              : belief.paper.recloseBlocked[feeder.id]
                ? say('state.recloseBlocked')
                : '',
          ),
        ),
      ),
    ])

  /** What lies there more than once stands under a heading. */
  const byKind = (items: readonly ItemBelief[]): readonly TreeNode[] =>
    [...new Set(items.map((it) => it.type))].flatMap((type) => {
      const same = items.filter((it) => it.type === type)
      if (same.length === 1) return same.map((it) => item(2, it, 'tarp'))
      return [
        all(
          2,
          `tarp:${type}`,
          speaker.say(`gear.${type}`),
          plain(same.length, 0),
          same.map((it) => item(3, it, 'tarp')),
        ),
      ]
    })

  /** Boots stand together: one order puts a pair on each of the crew. */
  const store = (kind: 'fitted' | 'tarp' | 'left' | 'truck' | 'quarantine') => {
    const items = belief.items.filter((it) => it.where.kind === kind)
    const nodes = kind === 'tarp' ? byKind(items) : items.map((it) => item(2, it, kind))
    return items.length === 0
      ? null
      : node(1, `store/${kind}`, say(`tree.${kind}`), plain(items.length, 0), undefined, nodes)
  }

  const boots = () => all(1, 'boots', say('all.boots'), '')

  const out = () => {
    const { length } = membersOf(belief, groupOf('out'))
    return all(1, 'out', say('all.out'), plain(length, 0))
  }

  return { crew, carried, pole, aloft, ground, network, boots, out, store }
}
