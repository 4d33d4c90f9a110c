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
  /** The end of a lead that it sits at: what it changes counts there alone. */
  readonly end?: string
}

export interface GearType {
  readonly id: string
  /** Numbers of the catalogue's table it stands for; none: material that is built in. */
  readonly rows: readonly number[]
  /** What its pass criterion rests on; the criterion itself stands in src/text, `passes.` and its id. */
  readonly passes: PassSource
  /** Hands it fills when held; 0: in a holster or round the neck. */
  readonly hands: 0 | 1 | 2
  /** Ends that clamp, in order along the lead. */
  readonly ends?: readonly string[]
  /** Where the tails of all its ends meet, a boss or a bar; without one the ends follow each other along the lead. */
  readonly hub?: string
  readonly worn?: Worn
  /** How it can be tested in the field; missing: only looked at and read. */
  readonly test?: 'roll' | 'air' | 'self-test' | 'flex' | 'try' | 'gauge' | 'call' | 'count'
  /** Defects and harmless marks; a mark has empty `changes`. */
  readonly defects: readonly GearDefect[]
  /** Parameters of the elements it becomes and of its use, when sound; a label value of the same name wins. */
  readonly parameters: Readonly<Record<string, number | string | boolean>>
}

export interface PassSource {
  readonly source: string
  /** Checked against the text or a page that quotes it; from memory; or practice that nobody wrote down. */
  readonly sure: 'checked' | 'memory' | 'practice'
}

/** One thing at each; what is worn over something else has a place of its own. */
export type Worn = 'feet' | 'over-feet' | 'hands' | 'over-hands' | 'arms' | 'legs' | 'body' | 'head'
