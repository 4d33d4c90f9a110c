/** The job cannot go on as it was going: the line came alive, or what was found forbids it. */
export type Why =
  | 'livening'
  /** Thunder is heard. */
  | 'thunder'
  /** It does not go away. */
  | 'thunder-stays'
  /** Somebody was struck. */
  | 'casualty'
  /** A blade did not open. */
  | 'blade-closed'
  /** A detector indicates, or a tester does not prove. */
  | 'not-dead'
  /** Nothing sound of a kind is left on the truck. */
  | 'no-sound-gear'

/** @public why is looked at by demonstrate.ts alone */
export class BrokenOff extends Error {
  constructor(
    readonly why: Why,
    /** What it is about: a thing, a type of gear. */
    readonly about = '',
  ) {
    super(`${why} ${about}`)
  }
}
