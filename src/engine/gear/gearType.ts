/**
 * What a catalogue entry says of an item: data only. Site and hazard interpret it. What is wrong with one item is in
 * the scenario (`defects`); how it could be found is here.
 */
export type FoundBy = 'look' | 'label' | 'test'

export interface GearDefect {
  /** Kebab, unique within the type. */
  readonly id: string
  readonly foundBy: FoundBy
  /** Its evidence without the verdict: a key of src/text (`gear.boots.look.hole`). */
  readonly evidence: string
  /** Changes that the defect makes to what the item does, by parameter name; see `GearType.parameters`. */
  readonly changes: Readonly<Record<string, number | string | boolean>>
}

export interface GearType {
  readonly id: string
  /** Number of the catalogue's table it stands for. */
  readonly row: number
  /** Hands it fills when held; 0: in a holster or round the neck. */
  readonly hands: 0 | 1 | 2
  /** Ends that clamp, in order along the lead. */
  readonly ends?: readonly string[]
  readonly worn?: 'feet' | 'hands' | 'body' | 'head'
  /** How it can be tested in the field; missing: only looked at and read. */
  readonly test?: 'roll' | 'air' | 'self-test' | 'flex' | 'try'
  /** Defects and harmless marks; a mark has empty `changes`. */
  readonly defects: readonly GearDefect[]
  /** Parameters of the elements it becomes and of its use, when sound; a label value of the same name wins. */
  readonly parameters: Readonly<Record<string, number | string | boolean>>
}
