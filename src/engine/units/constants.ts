/** Constants of nature, SI. Those that belong to one trade formula stand beside that formula. */

/** Vacuum permittivity, F/m. CODATA 2018 (the 2022 value differs in the tenth digit). */
export const EPS0 = 8.8541878128e-12

/** Vacuum permeability, H/m: 4π × 10⁻⁷, the value that was exact before 2019 and that every line-constant table uses. */
export const MU0 = 1.2566370614359173e-6
