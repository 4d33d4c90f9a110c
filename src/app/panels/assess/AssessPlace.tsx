/** The assessor's side. */
export function AssessPlace() {
  return <main />
}
