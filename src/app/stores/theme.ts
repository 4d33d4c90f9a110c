/** Names of the themes; their values are in src/app/tokens.ts. */
export const themes = ['light', 'dark', 'contrast'] as const
export type Theme = (typeof themes)[number]
