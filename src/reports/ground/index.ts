export { groundReport, surfaceCsv, type GroundReport } from './groundReport'
export { alongLine, overRectangle, type Stretch } from './surfacePlaces'
