export * from './contact'
export * from './leadHeating'
export * from './material'
export * from './pull'
