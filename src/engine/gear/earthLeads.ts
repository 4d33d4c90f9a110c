/** Types of gear that earth conductors: clamp by clamp from a rod. */
export const earthLeadTypes: readonly string[] = ['earth-lead', 'earth-set', 'spring-lead']

export function isEarthLead(type: string | undefined): boolean {
  return type !== undefined && earthLeadTypes.includes(type)
}
