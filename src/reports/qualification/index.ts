export { qualificationLines, qualifyCase, type CaseResult } from './qualify'
export type { QualificationCase } from './qualificationCase'
