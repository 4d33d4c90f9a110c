/** The debrief. */
export function DebriefPlace() {
  return <main />
}
