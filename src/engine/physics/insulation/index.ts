export * from './layerAdmittance'
export * from './rating'
export * from './withstand'
