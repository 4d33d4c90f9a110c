export * from './impedance'
export * from './shockPath'
export * from './shockZone'
export * from './tolerable'
