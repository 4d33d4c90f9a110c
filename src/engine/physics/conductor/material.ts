/**
 * Conductor materials for adiabatic heating.
 * K (A·√s/mm²), B (°C below 0 at which the resistance line meets zero) and the resistivity at 20 °C as printed in
 * IEC 60364-5-54 Annex A / IEC 60949; melting points as used by IEEE Std 80 (copper annealed, aluminium EC, steel 1020;
 * from memory, high confidence). The volumetric heat follows from K² = Qc (B + 20)/ρ20, so that heating by I²R step by
 * step and the k formula are the same thing; it gives 3.46, 2.50 and 3.78 J/(K·cm³) against the printed 3.45, 2.5, 3.8.
 */
export const conductorMaterials = ['copper', 'aluminium', 'steel'] as const
export type ConductorMaterial = (typeof conductorMaterials)[number]

export interface ThermalConstants {
  /** A·√s per m² of cross-section. */
  readonly heatingConstant: number
  /** °C: resistance is proportional to (this + temperature). */
  readonly zeroResistanceOffset: number
  /** ohm·m at 20 °C. */
  readonly resistivity20: number
  /** °C. */
  readonly meltingPoint: number
}

const perSquareMillimetre = 1e6

export const thermalConstants: Readonly<Record<ConductorMaterial, ThermalConstants>> = {
  copper: {
    heatingConstant: 226 * perSquareMillimetre,
    zeroResistanceOffset: 234.5,
    resistivity20: 17.241e-9,
    meltingPoint: 1083,
  },
  aluminium: {
    heatingConstant: 148 * perSquareMillimetre,
    zeroResistanceOffset: 228,
    resistivity20: 28.264e-9,
    meltingPoint: 657,
  },
  steel: {
    heatingConstant: 78 * perSquareMillimetre,
    zeroResistanceOffset: 202,
    resistivity20: 138e-9,
    meltingPoint: 1510,
  },
}
