/** The assessor's set-up. */
export function AssessSetUp({ scenario }: { scenario: string }) {
  return <p>{scenario}</p>
}
