export * from './operatingTime'
export * from './relayProgress'
