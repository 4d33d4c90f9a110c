// The engine's version: a whole number that goes up by one with every change of a formula, a constant or a rule kind,
// so that an old result can be told from a new one. The digest beside it changes with every line.

export const engineVersion = 4
