/** Gauss–Legendre points and weights on [0, 1], four of them (Abramowitz and Stegun, table 25.4, moved from [-1, 1]). */
export const GAUSS = [
  [0.06943184420297371, 0.17392742256872692],
  [0.33000947820757187, 0.32607257743127307],
  [0.6699905217924281, 0.32607257743127307],
  [0.9305681557970263, 0.17392742256872692],
] as const
