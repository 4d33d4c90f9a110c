export { qualificationLines, qualifyCase, type CaseResult } from './qualify'
export type { FindScenarioText } from './model'
export type { QualificationCase } from './qualificationCase'
export type { ComparedValue } from './compare'
