export { qualificationLines, qualifyCase } from './qualify'
export type { QualificationCase } from './qualificationCase'
