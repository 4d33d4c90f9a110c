export * from './fuseLinks'
export * from './fuseTime'
export * from './operatingTime'
export * from './relayProgress'
