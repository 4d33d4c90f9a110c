/** What one recorded run does differently from the clean one. The clean run is the default of every field. */
export interface Choices {
  /** Register numbers of what is taken. */
  readonly boots: Readonly<Record<'pic' | 'pw' | 'gw', string | null>>
  readonly stick: string
  readonly lead: string
  readonly bond: string
  readonly rod: string
  /** Numbers that are looked at, found wanting and set aside before the others are taken. */
  readonly rejected: readonly string[]
  /** Metres from rod, pole and stay anchor. */
  readonly barrier: number
  readonly isSwitched: boolean
  /** Blades said to be open whatever is seen. */
  readonly looksAtBlades: boolean
  readonly isCovered: boolean
  readonly isConductorEndFirst: boolean
  readonly leavesLeadAloft: boolean
  /** Rubber gloves stay on for the stick and the bond, leather comes on only for the work itself. */
  readonly isRubberAloft: boolean
  /** The set that the operator puts on the switch that was opened, before the permit. */
  readonly mainEarth: string | null
  /** `no`, `while` the pole worker clamps, or `before` that, one after the other. */
  readonly holdsLead: 'no' | 'while' | 'before'
}

export const clean: Choices = {
  boots: { pic: 'BT-41', pw: 'BT-42', gw: 'BT-43' },
  stick: 'S-11',
  lead: 'E-07',
  bond: 'B-02',
  rod: 'R-1',
  rejected: [],
  barrier: 6,
  isSwitched: true,
  looksAtBlades: true,
  isCovered: true,
  isConductorEndFirst: false,
  leavesLeadAloft: false,
  isRubberAloft: false,
  mainEarth: null,
  holdsLead: 'no',
}
